namespace Formwright.Jigs.BoardChecks;

/// <summary>What feeler gauges found under the straight edge at one place.</summary>
/// <param name="Place">Key of the place, as in the gap table: <c>nut</c>, <c>fret5</c>, <c>bar1</c>, <c>deepest</c>.</param>
/// <param name="BassMm">Gap at the bass edge of the neck, mm; the same as the treble one where only one was taken.</param>
/// <param name="TrebleMm">Gap at the treble edge of the neck, mm.</param>
/// <param name="IsSided">Whether bass and treble were taken apart.</param>
public sealed record MeasuredGap(string Place, double BassMm, double TrebleMm, bool IsSided)
{
    /// <summary>Their middle, mm.</summary>
    public double MeanMm => (BassMm + TrebleMm) / 2;
}
