using System.CommandLine;
using System.Text;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Packs;

namespace Formwright.Cli.Commands;

/// <summary>What several commands do with a design file.</summary>
internal static class DesignFile
{
    public static Argument<string> Argument() =>
        new(CliWords.Of["argument.file"]) { Description = CliWords.Of["argument.design"] };

    /// <summary>Reads a design; null after its diagnostics were told.</summary>
    public static DesignReading? Read(string path, Streams streams)
    {
        DesignReading reading = DesignText.Load(path);
        foreach (Diagnostic diagnostic in reading.Diagnostics)
        {
            streams.Error.WriteLine(diagnostic);
        }

        return reading.Succeeded ? reading : null;
    }

    /// <summary>Computes a design, with a word to the maker where it takes long.</summary>
    public static Study Study(DesignReading reading, Streams streams)
    {
        using SlowNotice notice = new(streams, CliWords.Of["progress.computing"]);
        return Packs.Study.Of(reading.Design!);
    }

    /// <summary>Writes a design beside its place and renames it: the file is whole or as it was.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="text">The design's text.</param>
    /// <param name="replace">Whether a file that is there gives way.</param>
    /// <exception cref="IOException">The disk failed, or the file is there and must stay.</exception>
    public static void Write(string path, string text, bool replace)
    {
        string target = Path.GetFullPath(path);
        string fresh = Path.Combine(
            Path.GetDirectoryName(target)!,
            $".{Path.GetFileName(target)}.{Guid.NewGuid():N}"
        );
        try
        {
            File.WriteAllText(fresh, text, new UTF8Encoding(false));
            File.Move(fresh, target, replace);
        }
        finally
        {
            File.Delete(fresh);
        }
    }
}
