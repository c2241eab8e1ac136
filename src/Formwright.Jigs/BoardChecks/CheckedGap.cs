using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.BoardChecks;

/// <summary>A measured gap beside the one that the straight edge should show.</summary>
/// <param name="Row">Row of the gap table.</param>
/// <param name="Found">What was measured.</param>
/// <param name="Within">Whether both sides are within the tolerance.</param>
public sealed record CheckedGap(GapRow Row, MeasuredGap Found, bool Within)
{
    /// <summary>Bass side: found over expected, mm.</summary>
    public double BassOverMm => Found.BassMm - Row.GapMm;

    /// <summary>Treble side: found over expected, mm.</summary>
    public double TrebleOverMm => Found.TrebleMm - Row.GapMm;
}
