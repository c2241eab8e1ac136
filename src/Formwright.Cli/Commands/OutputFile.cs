using Formwright.Drawing;
using Formwright.Sheets;
using Formwright.Writers;

namespace Formwright.Cli.Commands;

/// <summary>Files that a command writes beside a design.</summary>
internal static class OutputFile
{
    /// <summary>Whether all files may be written; what stands in the way is told.</summary>
    public static bool MayWrite(bool force, Streams streams, params string?[] paths)
    {
        foreach (string? path in paths)
        {
            if (path is null)
            {
                continue;
            }

            if (Directory.Exists(path))
            {
                streams.Error.WriteLine(CliWords.Of.Format("new.folder", path));
                return false;
            }

            if (!force && File.Exists(path))
            {
                streams.Error.WriteLine(CliWords.Of.Format("new.exists", path));
                return false;
            }
        }

        return true;
    }

    /// <summary>Writes sheets as one PDF beside its place and renames it: the file is whole or as it was.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    public static void Sheets(string path, IReadOnlyList<NamedSheet> sheets)
    {
        string target = Path.GetFullPath(path);
        string fresh = Path.Combine(
            Path.GetDirectoryName(target)!,
            $".{Path.GetFileName(target)}.{Guid.NewGuid():N}"
        );
        try
        {
            DrawnSheet[] drawn = [.. sheets.Select(named => named.Sheet.Draw())];
            using (FileStream stream = File.Create(fresh))
            {
                PdfWriter.Write(stream, drawn);
            }

            File.Move(fresh, target, overwrite: true);
        }
        finally
        {
            File.Delete(fresh);
        }
    }
}
