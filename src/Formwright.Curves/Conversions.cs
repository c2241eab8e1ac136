using Formwright.Curves.Converting;

namespace Formwright.Curves;

/// <summary>Curves as what files and machines take. Fairness is judged on the chain, never on these.</summary>
/// <remarks>
/// Each takes the tolerance asked for and states the error achieved, measured at 9 to 15 places in every piece and at the top between
/// them (within some per cent of the true maximum of that piece). Corners and steps of curvature of the curve stay ends of pieces; between
/// them the fewest pieces with about equal errors are sought (<c>Partition</c>), which a reversed or mirrored curve shares.
/// </remarks>
public static class Conversions
{
    /// <summary>Straight pieces with their ends on the curve.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static Polyline ToPolyline(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Chords.Of(curve, Guard.Positive(toleranceMm));
    }

    /// <summary>Tangent arcs (biarcs) and lines, as DXF bulges and machine arcs want them.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static ArcPath ToArcs(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Arcs.Of(curve, Guard.Positive(toleranceMm));
    }

    /// <summary>Cubic Béziers with the curve's tangents at their ends.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static BezierPath ToBeziers(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Beziers.Of(curve, Guard.Positive(toleranceMm));
    }
}
