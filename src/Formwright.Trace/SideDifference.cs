namespace Formwright.Trace;

/// <summary>Half widths of both sides at a station, off the fair curve of each.</summary>
/// <param name="UMm">Station from the heel, mm.</param>
/// <param name="BassMm">Half width of the bass side, mm.</param>
/// <param name="TrebleMm">Half width of the treble side, mm.</param>
public readonly record struct SideDifference(double UMm, double BassMm, double TrebleMm)
{
    /// <summary>By how much the treble side is wider, mm.</summary>
    public double TrebleOverBassMm => TrebleMm - BassMm;
}
