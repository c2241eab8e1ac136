namespace Formwright.Trace.Comparing;

/// <summary>Full widths of two outlines at a station; 0 beyond a tail.</summary>
/// <param name="UMm">Station from the heel, mm.</param>
/// <param name="WidthMm">Width of the first, mm.</param>
/// <param name="OtherWidthMm">Width of the second, mm.</param>
public readonly record struct WidthPair(double UMm, double WidthMm, double OtherWidthMm)
{
    /// <summary>By how much the second is wider, mm.</summary>
    public double DifferenceMm => OtherWidthMm - WidthMm;
}
