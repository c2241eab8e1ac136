using Formwright.Trace.Csv;
using Formwright.Trace.Dxf;
using Formwright.Trace.Svg;

namespace Formwright.Trace.Files;

/// <summary>Reads trace files: SVG, DXF and CSV. Nothing is fetched from anywhere, and nothing throws for what a file holds.</summary>
public static class TraceReader
{
    private const int HeadBytes = 512;

    /// <summary>The kinds of files, the most particular first.</summary>
    private static readonly ITraceReader[] Readers =
    [
        new SvgFiles(),
        new DxfFiles(),
        new CsvFiles(),
    ];

    /// <summary>Reads a file's bytes; its kind is told by its beginning, not by its name.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="name">Name for diagnostics.</param>
    public static TraceReading Read(ReadOnlyMemory<byte> bytes, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (bytes.Length > TraceLimits.MaxBytes)
        {
            return Failed(name, "fault.file-too-large", TraceLimits.MaxBytes / 1_000_000);
        }

        ITraceReader? reader = Array.Find(
            Readers,
            each => each.Takes(bytes.Span[..Math.Min(bytes.Length, HeadBytes)])
        );
        if (reader is null)
        {
            return Failed(name, "fault.not-a-trace");
        }

        try
        {
            TraceFile file = reader.Read(bytes, name);
            return file.Curves.Count > 0
                ? new TraceReading(file, [])
                : Failed(name, "fault.no-curves");
        }
        catch (TraceFault fault)
        {
            return new TraceReading(null, [fault.Diagnostic]);
        }
    }

    /// <summary>Reads a file from disk; a missing or too large one is a diagnostic.</summary>
    /// <exception cref="IOException">The disk failed while a file that exists was read.</exception>
    public static TraceReading Load(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        FileInfo info = new(path);
        if (!info.Exists)
        {
            return Failed(path, "fault.no-file", path);
        }

        return info.Length > TraceLimits.MaxBytes
            ? Failed(path, "fault.file-too-large", TraceLimits.MaxBytes / 1_000_000)
            : Read(File.ReadAllBytes(path), path);
    }

    private static TraceReading Failed(string name, string key, params object?[] values) =>
        new(null, [TraceDiagnostic.Of(name, 1, 1, key, values)]);
}
