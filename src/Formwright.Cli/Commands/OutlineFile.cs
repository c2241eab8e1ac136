using Formwright.Curves;
using Formwright.Design;
using Formwright.Instrument.Body;
using Formwright.Trace;

namespace Formwright.Cli.Commands;

/// <summary>An outline, wherever it comes from: a design file or a tracing.</summary>
/// <param name="Name">Name of the file without its ending.</param>
/// <param name="Outline">The outline.</param>
internal sealed record OutlineFile(string Name, Outline Outline)
{
    /// <summary>Whether a file is read as a design: one whose name does not end as those of tracings do.</summary>
    public static bool IsDesign(string path) =>
        Path.GetExtension(path).ToUpperInvariant() is not (".SVG" or ".DXF" or ".CSV" or ".TXT");

    /// <summary>Reads a design (<c>.toml</c>) or a tracing; null after what is wrong was told.</summary>
    public static OutlineFile? Read(string path, TraceOptions options, Streams streams)
    {
        string name = Path.GetFileNameWithoutExtension(path);
        if (!IsDesign(path))
        {
            return TraceInput.Run(path, options, streams) is { } trace
                ? new OutlineFile(name, trace.Fair)
                : null;
        }

        return DesignFile.Read(path, streams) is { } reading ? Of(path, reading, streams) : null;
    }

    /// <summary>The outline of a design; null after the findings that stand in its way were told.</summary>
    public static OutlineFile? Of(string path, DesignReading reading, Streams streams)
    {
        OutlineSolution solution = BodyOutline.Solve(reading.Design!.Outline);
        if (solution.Outline is { } outline)
        {
            return new OutlineFile(Path.GetFileNameWithoutExtension(path), outline);
        }

        FindingList.Write(
            streams.Error,
            path,
            reading,
            [
                .. OutlineRules.Of(
                    solution.Problems,
                    reading.Design.Identity.JoinMm,
                    reading.Design.Outline
                ),
            ]
        );
        return null;
    }
}
