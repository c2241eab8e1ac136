using System.CommandLine;
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
}
