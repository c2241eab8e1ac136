namespace Formwright.Curves.Offsetting;

/// <summary>A run of raw offset spans that follow each other without a gap.</summary>
/// <param name="Spans">In order.</param>
/// <param name="IsClosed">The last ends where the first starts.</param>
/// <param name="IsCutter">Only cuts others: of an open source, the other side and the circles about its ends.</param>
internal sealed record Strand(List<OffsetSpan> Spans, bool IsClosed, bool IsCutter);
