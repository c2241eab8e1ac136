using System.Globalization;
using System.Text;

namespace Formwright.Web.Designs;

/// <summary>The folder that holds a workshop's designs, one TOML file each. Nothing outside it is read or written; links are not followed.</summary>
public sealed class DesignFolder
{
    private const string Ending = ".toml";
    public const string BinName = ".bin";
    private const string Stamp = "yyyyMMdd-HHmmss";

    /// <param name="path">The folder; it is made where it is missing.</param>
    /// <exception cref="IOException">It can't be made.</exception>
    public DesignFolder(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        Root = Path.GetFullPath(path);
        Directory.CreateDirectory(Root);
    }

    public string Root { get; }

    /// <summary>Names of the designs, in the reader's order.</summary>
    public IReadOnlyList<string> Names() =>
        [
            .. new DirectoryInfo(Root)
                .EnumerateFiles("*" + Ending)
                .Where(file => file.LinkTarget is null)
                .Select(file => Path.GetFileNameWithoutExtension(file.Name))
                .Where(DesignName.IsValid)
                .Order(
                    StringComparer.Create(
                        CultureInfo.CurrentCulture,
                        CompareOptions.IgnoreCase | CompareOptions.NumericOrdering
                    )
                ),
        ];

    /// <summary>Path of a design's file.</summary>
    /// <exception cref="ArgumentException">The name is none, or the file is a link.</exception>
    public string PathOf(string name)
    {
        if (!DesignName.IsValid(name))
        {
            throw new ArgumentException("Not the name of a design.", nameof(name));
        }

        FileInfo file = new(Path.Combine(Root, name + Ending));
        return file.LinkTarget is null
            ? file.FullName
            : throw new ArgumentException("A link is no design.", nameof(name));
    }

    public bool Exists(string name) =>
        DesignName.IsValid(name)
        && new FileInfo(Path.Combine(Root, name + Ending)) is { Exists: true, LinkTarget: null };

    /// <summary>Writes a design whole or not at all: beside its place, then renamed over it.</summary>
    /// <exception cref="IOException">The disk failed; the file is as it was.</exception>
    public void Write(string name, string text)
    {
        string path = PathOf(name);
        string fresh = Path.Combine(Root, $".{Guid.NewGuid():N}.tmp");
        try
        {
            File.WriteAllText(fresh, text, new UTF8Encoding(false));
            File.Move(fresh, path, overwrite: true);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    /// <summary>A name that is free, made from a wish by adding 2, 3 …</summary>
    public string FreeName(string wish)
    {
        string name = DesignName.IsValid(wish) ? wish : "design";
        for (int i = 2; Exists(name); i++)
        {
            name = string.Create(
                CultureInfo.InvariantCulture,
                $"{(DesignName.IsValid(wish) ? wish : "design")} {i}"
            );
        }

        return name;
    }

    /// <summary>Gives a design another name.</summary>
    /// <exception cref="IOException">The other name is taken, or the disk failed.</exception>
    public void Rename(string from, string to) => File.Move(PathOf(from), PathOf(to));

    /// <summary>Moves a design into the bin, a folder beside the designs.</summary>
    public void Bin(string name)
    {
        Directory.CreateDirectory(BinPath);
        string stamp = DateTime.Now.ToString(Stamp, CultureInfo.InvariantCulture);
        File.Move(PathOf(name), Path.Combine(BinPath, $"{name} {stamp}{Ending}"), overwrite: true);
    }

    /// <summary>What is in the bin, the latest first.</summary>
    public IReadOnlyList<BinnedDesign> Binned() =>
        new DirectoryInfo(BinPath) is not { Exists: true, LinkTarget: null } bin
            ? []
            :
            [
                .. bin.EnumerateFiles("*" + Ending)
                    .Where(file => file.LinkTarget is null)
                    .Select(file => OfBin(Path.GetFileNameWithoutExtension(file.Name)))
                    .OfType<BinnedDesign>()
                    .OrderByDescending(each => each.At)
                    .ThenBy(each => each.Name, StringComparer.Ordinal),
            ];

    /// <summary>Takes a design out of the bin, under its own name or, where that is taken by now, the next one that is free.</summary>
    /// <param name="file">Its file's name, as <see cref="Binned"/> gives it.</param>
    /// <returns>The name it has now; null where the bin has no such file.</returns>
    /// <exception cref="IOException">The disk failed.</exception>
    public string? PutBack(string file)
    {
        if (Binned().FirstOrDefault(each => each.File == file) is not { } binned)
        {
            return null;
        }

        string name = FreeName(binned.Name);
        File.Move(Path.Combine(BinPath, file + Ending), PathOf(name));
        return name;
    }

    private string BinPath => Path.Combine(Root, BinName);

    private static BinnedDesign? OfBin(string file) =>
        file.LastIndexOf(' ') is var at and > 0
        && DesignName.IsValid(file[..at])
        && DateTime.TryParseExact(
            file[(at + 1)..],
            Stamp,
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out DateTime moved
        )
            ? new BinnedDesign(file, file[..at], moved)
            : null;
}
