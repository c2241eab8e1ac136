using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>A cubic Bézier piece.</summary>
public sealed record CubicPiece(CubicBezier Curve) : Piece
{
    public override bool IsFinite =>
        Curve.P0.IsFinite && Curve.P1.IsFinite && Curve.P2.IsFinite && Curve.P3.IsFinite;

    internal override int FirstSteps => 8;

    /// <summary>A quadratic Bézier, raised to a cubic one (exact).</summary>
    public static CubicPiece OfQuadratic(Point p0, Point p1, Point p2) =>
        new(new CubicBezier(p0, p0.Towards(p1, 2.0 / 3), p2.Towards(p1, 2.0 / 3), p2));

    public override Point At(double t) =>
        t == 0 ? Curve.P0
        : t == 1 ? Curve.P3
        : Curve.At(t);

    public override Piece Under(Affine map) =>
        new CubicPiece(
            new CubicBezier(map.Of(Curve.P0), map.Of(Curve.P1), map.Of(Curve.P2), map.Of(Curve.P3))
        );

    public override Piece Reversed() =>
        new CubicPiece(new CubicBezier(Curve.P3, Curve.P2, Curve.P1, Curve.P0));
}
