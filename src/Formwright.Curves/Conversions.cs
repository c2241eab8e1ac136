namespace Formwright.Curves;

/// <summary>Curves as what files and machines take. Fairness is judged on the chain, never on these.</summary>
public static class Conversions
{
    /// <summary>Straight pieces within a tolerance.</summary>
    public static Polyline ToPolyline(this ICurve curve, double toleranceMm) =>
        throw new NotImplementedException();

    /// <summary>Tangent arcs within a tolerance.</summary>
    public static ArcPath ToArcs(this ICurve curve, double toleranceMm) =>
        throw new NotImplementedException();

    /// <summary>Cubic Béziers within a tolerance.</summary>
    public static BezierPath ToBeziers(this ICurve curve, double toleranceMm) =>
        throw new NotImplementedException();
}
