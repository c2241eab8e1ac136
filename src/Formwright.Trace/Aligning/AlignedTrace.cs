using Formwright.Curves;

namespace Formwright.Trace.Aligning;

/// <summary>The sides of a trace in the body frame: each from heel to tail, y ≥ 0 but for noise (the bass side mirrored).</summary>
/// <param name="Treble">Points of the treble side; null where only the bass side is given.</param>
/// <param name="Bass">Points of the bass side; null where only the treble side is given.</param>
/// <param name="Alignment">How it was laid on the centreline.</param>
internal sealed record AlignedTrace(Point[]? Treble, Point[]? Bass, TraceAlignment Alignment)
{
    internal AlignedTrace Scaled(double factor) =>
        this with
        {
            Treble = Scaled(Treble, factor),
            Bass = Scaled(Bass, factor),
        };

    private static Point[]? Scaled(Point[]? points, double factor) =>
        points is null ? null : [.. points.Select(p => new Point(p.X * factor, p.Y * factor))];
}
