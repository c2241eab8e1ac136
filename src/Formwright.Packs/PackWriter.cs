using System.Security.Cryptography;
using Formwright.Design.Reading;
using Formwright.Packs.Report;
using Formwright.Words;

namespace Formwright.Packs;

/// <summary>
/// Writes a pack: the folder of everything for one design. It is written beside its place and renamed, so that it is whole or absent;
/// an earlier pack there gives way only when the new one is complete.
/// </summary>
public static class PackWriter
{
    private const string ManifestName = "pack.json";

    /// <summary>Writes the pack of a study.</summary>
    /// <param name="study">A study without findings of severity stop.</param>
    /// <param name="designText">The design's text, kept in the pack.</param>
    /// <param name="folder">Where it goes: a folder that is absent, empty, or holds an earlier pack.</param>
    /// <param name="progress">Told after each file.</param>
    /// <param name="cancel">Asks to stop; nothing is left behind then.</param>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    /// <exception cref="IOException">The disk failed; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder can't be written; nothing is left behind.</exception>
    public static PackResult Write(
        Study study,
        string designText,
        string folder,
        IProgress<PackProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentException.ThrowIfNullOrEmpty(folder);
        if (study.IsStopped || study.Guitar is null)
        {
            return new PackResult(null, null, PacksWords.Of["stopped"]);
        }

        // The same design gives the same bytes, whatever language the person at the keyboard speaks.
        using Language spoken = Language.Use(Choices.NameOf(study.Design.Sheets.Language));
        return Write(
            study.Design.Identity.Name,
            PackContents.Of(study, designText),
            folder,
            progress,
            cancel
        );
    }

    /// <summary>Writes files into a folder of their own, with a manifest, whole or not at all.</summary>
    internal static PackResult Write(
        string name,
        IEnumerable<PackEntry> entries,
        string folder,
        IProgress<PackProgress>? progress,
        CancellationToken cancel
    )
    {
        string target = Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar);
        if (File.Exists(target) || IsForeign(target))
        {
            return new PackResult(null, null, PacksWords.Of.Format("foreign", folder));
        }

        string parent = Path.GetDirectoryName(target)!;
        Directory.CreateDirectory(parent);
        string fresh = Path.Combine(parent, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}");
        try
        {
            // Before anything is drawn: where nothing can be written, that is told at once.
            Directory.CreateDirectory(fresh);
            PackManifest manifest = WriteInto(fresh, name, [.. entries], progress, cancel);
            Swap(fresh, target);
            return new PackResult(target, manifest, null);
        }
        finally
        {
            if (Directory.Exists(fresh))
            {
                Directory.Delete(fresh, recursive: true);
            }
        }
    }

    private static PackManifest WriteInto(
        string folder,
        string name,
        PackEntry[] entries,
        IProgress<PackProgress>? progress,
        CancellationToken cancel
    )
    {
        foreach (string path in entries.Select(entry => Path.Combine(folder, entry.File.Path)))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        }

        PackFile[] files = new PackFile[entries.Length];
        int done = 0;
        Parallel.For(
            0,
            entries.Length,
            new ParallelOptions { CancellationToken = cancel },
            i =>
            {
                files[i] = WriteOne(folder, entries[i]);
                progress?.Report(
                    new PackProgress(Interlocked.Increment(ref done), entries.Length, files[i].Path)
                );
            }
        );
        PackManifest manifest = new(
            name,
            [.. files.OrderBy(file => file.Path, StringComparer.Ordinal)]
        );
        File.WriteAllText(Path.Combine(folder, ManifestName), ReportJson.Write(manifest));
        return manifest;
    }

    private static PackFile WriteOne(string folder, PackEntry entry)
    {
        using MemoryStream bytes = new();
        entry.Write(bytes);
        ReadOnlySpan<byte> content = bytes.GetBuffer().AsSpan(0, (int)bytes.Length);
        using FileStream file = File.Create(Path.Combine(folder, entry.File.Path));
        file.Write(content);
        return entry.File with
        {
            Bytes = content.Length,
            Sha256 = Convert.ToHexStringLower(SHA256.HashData(content)),
        };
    }

    private static void Swap(string fresh, string target)
    {
        if (!Directory.Exists(target))
        {
            Directory.Move(fresh, target);
            return;
        }

        string old = fresh + ".old";
        Directory.Move(target, old);
        try
        {
            Directory.Move(fresh, target);
        }
        catch (IOException)
        {
            Directory.Move(old, target);
            throw;
        }

        Directory.Delete(old, recursive: true);
    }

    // A folder with files that no pack of ours wrote is never replaced.
    private static bool IsForeign(string target) =>
        Directory.Exists(target)
        && Directory.EnumerateFileSystemEntries(target).Any()
        && !File.Exists(Path.Combine(target, ManifestName));
}
