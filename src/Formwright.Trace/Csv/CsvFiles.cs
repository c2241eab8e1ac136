using Formwright.Trace.Files;

namespace Formwright.Trace.Csv;

/// <summary>Tables of figures: any text that is nothing else.</summary>
internal sealed class CsvFiles : ITraceReader
{
    public bool Takes(ReadOnlySpan<byte> head) => !head.Contains((byte)0);

    public TraceFile Read(ReadOnlyMemory<byte> bytes, string name) => CsvReader.Read(bytes, name);
}
