using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Takes model mm to sheet mm: X = a·x + c·y + e, Y = b·x + d·y + f, y upwards on both sides.
/// </summary>
public readonly record struct Placement(double A, double B, double C, double D, double E, double F)
{
    /// <summary>Leaves every point where it is.</summary>
    public static Placement Identity { get; } = new(1, 0, 0, 1, 0, 0);

    /// <summary>Area factor with its sign: negative means a mirror image.</summary>
    public double Determinant => (A * D) - (B * C);

    /// <summary>Whether circles stay circles (no separate scale of heights).</summary>
    public bool IsSimilarity
    {
        get
        {
            double size = Math.Abs(A) + Math.Abs(B) + Math.Abs(C) + Math.Abs(D);
            double sign = Determinant < 0 ? -1 : 1;
            return Math.Abs(A - (sign * D)) <= 1e-12 * size
                && Math.Abs(B + (sign * C)) <= 1e-12 * size;
        }
    }

    /// <summary>Sheet mm per model mm: the mean where the two axes differ.</summary>
    public double Scale => Math.Sqrt(Math.Abs(Determinant));

    /// <summary>
    /// Scales the model (its y axis by <paramref name="scale"/> × <paramref name="heights"/>), turns it by
    /// <paramref name="rotationRad"/> counter-clockwise and puts the model point <paramref name="origin"/> on the
    /// sheet point <paramref name="at"/>.
    /// </summary>
    public static Placement Of(
        Point at,
        Point origin,
        double scale,
        double rotationRad = 0,
        double heights = 1,
        bool mirrored = false
    )
    {
        double cos = Math.Cos(rotationRad);
        double sin = Math.Sin(rotationRad);
        // Quarter turns exactly: a true-scale line along the page stays along the page.
        cos = Math.Abs(cos) < 1e-15 ? 0 : cos;
        sin = Math.Abs(sin) < 1e-15 ? 0 : sin;
        double sx = scale;
        double sy = scale * heights * (mirrored ? -1 : 1);
        Placement turned = new(sx * cos, sx * sin, -sy * sin, sy * cos, 0, 0);
        Point from = turned.Apply(origin);
        return turned with { E = at.X - from.X, F = at.Y - from.Y };
    }

    public Point Apply(Point p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);

    /// <summary>The vector without the shift.</summary>
    public Vector Turn(Vector v) => new((A * v.X) + (C * v.Y), (B * v.X) + (D * v.Y));

    /// <summary>The model vector whose image is the sheet vector <paramref name="v"/>.</summary>
    /// <exception cref="InvalidOperationException">The placement squeezes everything onto a line.</exception>
    public Vector TurnBack(Vector v)
    {
        double det = Determinant;
        return det == 0
            ? throw new InvalidOperationException("A placement without area has no inverse.")
            : new(((D * v.X) - (C * v.Y)) / det, ((A * v.Y) - (B * v.X)) / det);
    }

    /// <summary>First <paramref name="inner"/>, then this.</summary>
    public Placement After(Placement inner)
    {
        Vector x = Turn(new(inner.A, inner.B));
        Vector y = Turn(new(inner.C, inner.D));
        Point o = Apply(new(inner.E, inner.F));
        return new(x.X, x.Y, y.X, y.Y, o.X, o.Y);
    }
}
