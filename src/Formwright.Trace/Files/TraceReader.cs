using Formwright.Design.Reading;
using Formwright.Trace.Csv;
using Formwright.Trace.Dxf;
using Formwright.Trace.Svg;

namespace Formwright.Trace.Files;

/// <summary>Reads trace files: SVG, DXF and CSV. Nothing is fetched from anywhere, and nothing throws for what a file holds.</summary>
public static class TraceReader
{
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

        if (FormatOf(bytes.Span) is not { } format)
        {
            return Failed(name, "fault.not-a-trace");
        }

        try
        {
            TraceFile file = format switch
            {
                TraceFormat.Svg => SvgReader.Read(bytes, name),
                TraceFormat.Dxf => DxfReader.Read(bytes, name),
                _ => CsvReader.Read(bytes, name),
            };
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

    /// <summary>The kind of a file by its beginning; null when it is no text.</summary>
    public static TraceFormat? FormatOf(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> head = bytes[..Math.Min(bytes.Length, 512)];
        if (
            head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])
            || head.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
        )
        {
            // UTF-16: of the three only XML is written so.
            return TraceFormat.Svg;
        }

        if (head.IndexOf("Binary DXF"u8) is >= 0 and < 12)
        {
            return TraceFormat.Dxf;
        }

        if (head.Contains((byte)0))
        {
            return null;
        }

        head = head.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? head[3..] : head;
        head = head.TrimStart(" \t\r\n"u8);
        if (head.StartsWith("<"u8))
        {
            return TraceFormat.Svg;
        }

        int end = head.IndexOfAny((byte)'\r', (byte)'\n');
        ReadOnlySpan<byte> first = (end < 0 ? head : head[..end]).TrimEnd(" \t"u8);
        bool isDxf = first.SequenceEqual("0"u8) || first.SequenceEqual("999"u8);
        return isDxf ? TraceFormat.Dxf : TraceFormat.Csv;
    }

    private static TraceReading Failed(string name, string key, params object?[] values) =>
        new(null, [new Diagnostic(name, 1, 1, "", TraceWords.Of.Format(key, values))]);
}
