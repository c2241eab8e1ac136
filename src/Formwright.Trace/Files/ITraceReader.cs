namespace Formwright.Trace.Files;

/// <summary>
/// Takes outlines out of one kind of file. Here is the place for a further kind, such as a photo: a reader that ends in a
/// <see cref="TraceFile"/> needs nothing else changed but its line in <see cref="TraceReader"/>.
/// </summary>
internal interface ITraceReader
{
    /// <summary>Whether the file looks like one of this kind.</summary>
    /// <param name="head">Its first bytes.</param>
    bool Takes(ReadOnlySpan<byte> head);

    /// <summary>The curves of a file. Nothing is fetched from anywhere; time and memory stay within <see cref="TraceLimits"/>.</summary>
    /// <exception cref="TraceFault">What is wrong with the file.</exception>
    TraceFile Read(ReadOnlyMemory<byte> bytes, string name);
}
