using Formwright.Trace.Files;

namespace Formwright.Trace.Svg;

/// <summary>SVG files, in UTF-8 or UTF-16.</summary>
internal sealed class SvgFiles : ITraceReader
{
    public bool Takes(ReadOnlySpan<byte> head) =>
        // UTF-16: of all kinds only XML is written so.
        head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])
        || head.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
        || TextHead.Of(head).StartsWith("<"u8);

    public TraceFile Read(ReadOnlyMemory<byte> bytes, string name) => SvgReader.Read(bytes, name);
}
