namespace Formwright.Curves;

/// <summary>A cubic Bézier piece.</summary>
public readonly record struct CubicBezier(Point P0, Point P1, Point P2, Point P3)
{
    public Point At(double t)
    {
        double r = 1 - t;
        double b0 = r * r * r;
        double b1 = 3 * r * r * t;
        double b2 = 3 * r * t * t;
        double b3 = t * t * t;
        return new(
            (b0 * P0.X) + (b1 * P1.X) + (b2 * P2.X) + (b3 * P3.X),
            (b0 * P0.Y) + (b1 * P1.Y) + (b2 * P2.Y) + (b3 * P3.Y)
        );
    }

    /// <summary>Derivative by the parameter, mm.</summary>
    public Vector Derivative(double t)
    {
        double r = 1 - t;
        return ((P1 - P0) * (3 * r * r)) + ((P2 - P1) * (6 * r * t)) + ((P3 - P2) * (3 * t * t));
    }
}
