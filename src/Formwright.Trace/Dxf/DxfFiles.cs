using Formwright.Trace.Files;

namespace Formwright.Trace.Dxf;

/// <summary>DXF files; binary ones are recognised, so that they can be refused by name.</summary>
internal sealed class DxfFiles : ITraceReader
{
    public bool Takes(ReadOnlySpan<byte> head)
    {
        ReadOnlySpan<byte> first = TextHead.FirstLine(head);
        return head.IndexOf("Binary DXF"u8) is >= 0 and < 12
            || first.SequenceEqual("0"u8)
            || first.SequenceEqual("999"u8);
    }

    public TraceFile Read(ReadOnlyMemory<byte> bytes, string name) => DxfReader.Read(bytes, name);
}
