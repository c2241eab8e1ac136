using Formwright.Curves.Converting;

namespace Formwright.Curves;

/// <summary>Curves as what files and machines take. Fairness is judged on the chain, never on these.</summary>
/// <remarks>
/// Each takes the tolerance asked for and states the error achieved, measured closely in every piece (up to 95 places,
/// and the top of the parabola between them). Corners and steps of curvature of the curve stay ends of pieces; between
/// them the fewest pieces with about equal errors are sought (<c>Partition</c>), which a reversed or mirrored curve shares.
/// </remarks>
public static class Conversions
{
    /// <summary>Straight pieces with their ends on the curve.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static Polyline ToPolyline(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Within(toleranceMm, asked => Chords.Of(curve, asked), made => made.ErrorMm);
    }

    /// <summary>Tangent arcs (biarcs) and lines, as DXF bulges and machine arcs want them.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static ArcPath ToArcs(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Within(toleranceMm, asked => Arcs.Of(curve, asked), made => made.ErrorMm);
    }

    /// <summary>Cubic Béziers with the curve's tangents at their ends.</summary>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static BezierPath ToBeziers(this ICurve curve, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Within(toleranceMm, asked => Beziers.Of(curve, asked), made => made.ErrorMm);
    }

    /// <summary>Asks for a little less than the tolerance, since the closer measurement at the end finds a little more; and again if it does.</summary>
    private static T Within<T>(double toleranceMm, Func<double, T> make, Func<T, double> error)
    {
        double asked = 0.99 * Guard.Positive(toleranceMm);
        T made = make(asked);
        for (int tries = 0; tries < 4 && error(made) > toleranceMm; tries++)
        {
            asked *= Math.Max(0.5, 0.95 * toleranceMm / error(made));
            made = make(asked);
        }

        return made;
    }
}
