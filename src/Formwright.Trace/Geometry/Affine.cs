using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>An affine map of the plane: x' = A x + C y + E, y' = B x + D y + F.</summary>
public readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    public static readonly Affine Identity = new(1, 0, 0, 1, 0, 0);

    /// <summary>This map after <paramref name="inner"/>.</summary>
    public Affine After(Affine inner) =>
        new(
            (A * inner.A) + (C * inner.B),
            (B * inner.A) + (D * inner.B),
            (A * inner.C) + (C * inner.D),
            (B * inner.C) + (D * inner.D),
            (A * inner.E) + (C * inner.F) + E,
            (B * inner.E) + (D * inner.F) + F
        );

    public Point Of(Point place) =>
        new((A * place.X) + (C * place.Y) + E, (B * place.X) + (D * place.Y) + F);

    public Vector Of(Vector step) => new((A * step.X) + (C * step.Y), (B * step.X) + (D * step.Y));

    public bool IsFinite =>
        double.IsFinite(A)
        && double.IsFinite(B)
        && double.IsFinite(C)
        && double.IsFinite(D)
        && double.IsFinite(E)
        && double.IsFinite(F);

    public static Affine Move(double x, double y) => new(1, 0, 0, 1, x, y);

    public static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    /// <summary>A turn about the origin, rad, from +x towards +y.</summary>
    public static Affine Turn(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new(cos, sin, -sin, cos, 0, 0);
    }
}
