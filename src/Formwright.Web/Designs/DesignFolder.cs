using System.Globalization;
using System.Text;

namespace Formwright.Web.Designs;

/// <summary>The folder that holds a workshop's designs, one TOML file each. Nothing outside it is read or written; links are not followed.</summary>
public sealed class DesignFolder
{
    private const string Ending = ".toml";
    public const string BinName = ".bin";

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
                .Order(StringComparer.CurrentCultureIgnoreCase),
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

    /// <summary>Moves a design into the bin, a folder beside the designs; it can be taken back from there by hand.</summary>
    public void Bin(string name)
    {
        string bin = Path.Combine(Root, BinName);
        Directory.CreateDirectory(bin);
        string stamp = DateTime.Now.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        File.Move(PathOf(name), Path.Combine(bin, $"{name} {stamp}{Ending}"), overwrite: true);
    }
}
