namespace Formwright.Jigs.Workboard;

/// <summary>How far a gap under the straight edge may be off.</summary>
public static class GapTolerance
{
    /// <summary>The finest tolerance that feeler gauges under a straight edge can hold, mm (common practice: two leaves of 0.05).</summary>
    public const double LeastMm = 0.1;

    /// <summary>On the ramp: that at the nut, smaller towards the join as the ramp itself is, no finer than <see cref="LeastMm"/>.</summary>
    /// <param name="atNutMm">Tolerance at the nut, mm.</param>
    /// <param name="share">Place: 1 at the nut, 0 at the join.</param>
    public static double OnRamp(double atNutMm, double share) => Math.Max(LeastMm, atNutMm * share);

    /// <summary>In the relief: half of its clearance, so that the dome stays clear, no finer than <see cref="LeastMm"/>.</summary>
    /// <param name="clearanceMm">Clearance under the dome, mm.</param>
    public static double InRelief(double clearanceMm) => Math.Max(LeastMm, clearanceMm / 2);
}
