namespace Formwright.Curves;

/// <summary>What a curve is at one place: where, which way, how strongly bent.</summary>
/// <param name="Position">Place, mm.</param>
/// <param name="Angle">Angle of the tangent from +x towards +y, rad; it runs on along a curve and is not wrapped.</param>
/// <param name="Curvature">Curvature, 1/mm, positive when the curve turns to the left.</param>
public readonly record struct CurvePoint(Point Position, double Angle, double Curvature)
{
    /// <summary>Unit tangent.</summary>
    public Vector Tangent => Vector.At(Angle);

    /// <summary>Unit normal to the left.</summary>
    public Vector Normal => Vector.At(Angle).Left;

    /// <summary>Radius of the curve, mm, without sign; infinite where it is straight.</summary>
    public double RadiusMm => 1 / Math.Abs(Curvature);
}
