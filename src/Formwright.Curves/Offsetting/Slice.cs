namespace Formwright.Curves.Offsetting;

/// <summary>A piece of a strand between two cuts.</summary>
internal sealed class Slice(Cut from, Cut to, List<OffsetSpan> spans)
{
    internal Cut From { get; } = from;

    internal Cut To { get; } = to;

    internal List<OffsetSpan> Spans { get; } = spans;
}
