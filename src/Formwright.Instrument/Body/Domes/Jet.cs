using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Instrument.Body.Domes;

/// <summary>Heights with their first and second derivatives, multiplied and composed by the product and chain rules.</summary>
internal static class Jet
{
    internal static HeightSample Times(this HeightSample a, HeightSample b) =>
        new(
            a.HeightMm * b.HeightMm,
            (b.Slope * a.HeightMm) + (a.Slope * b.HeightMm),
            (a.HeightMm * b.Zxx) + (2 * a.Slope.X * b.Slope.X) + (a.Zxx * b.HeightMm),
            (a.HeightMm * b.Zxy)
                + (a.Slope.X * b.Slope.Y)
                + (a.Slope.Y * b.Slope.X)
                + (a.Zxy * b.HeightMm),
            (a.HeightMm * b.Zyy) + (2 * a.Slope.Y * b.Slope.Y) + (a.Zyy * b.HeightMm)
        );

    /// <summary>f(z) from f, f' and f'' at z.</summary>
    internal static HeightSample Through(this HeightSample z, (double F, double D, double DD) f) =>
        new(
            f.F,
            z.Slope * f.D,
            (f.D * z.Zxx) + (f.DD * z.Slope.X * z.Slope.X),
            (f.D * z.Zxy) + (f.DD * z.Slope.X * z.Slope.Y),
            (f.D * z.Zyy) + (f.DD * z.Slope.Y * z.Slope.Y)
        );

    /// <summary>A sphere's upper half: √(R² - ρ²) about a centre on the centreline, plus a constant.</summary>
    internal static HeightSample Sphere(Point place, double centreX, double radius, double plus)
    {
        double x = place.X - centreX;
        double y = place.Y;
        double q = Math.Sqrt(Math.Max((radius * radius) - (x * x) - (y * y), 1e-12));
        double cube = q * q * q;
        return new(
            q + plus,
            new Vector(-x / q, -y / q),
            (-1 / q) - (x * x / cube),
            -x * y / cube,
            (-1 / q) - (y * y / cube)
        );
    }

    /// <summary>The step that rises from 0 at 0 to 1 at 1 with first and second derivatives 0 at both: 6t⁵ - 15t⁴ + 10t³.</summary>
    /// <param name="t">Place.</param>
    /// <param name="length">Length of the step: derivatives are by t · length.</param>
    internal static (double F, double D, double DD) Step(double t, double length)
    {
        if (t <= 0)
        {
            return (0, 0, 0);
        }

        if (t >= 1)
        {
            return (1, 0, 0);
        }

        double t2 = t * t;
        return (
            t2 * t * (10 + (t * ((6 * t) - 15))),
            30 * t2 * (1 + (t * (t - 2))) / length,
            60 * t * (1 + (t * ((2 * t) - 3))) / (length * length)
        );
    }

    /// <summary>
    /// The positive part of h, rounded over ±w with two continuous derivatives: h above w, 0 below -w, (h+w)³(3w-h)/16w³ between.
    /// </summary>
    internal static (double F, double D, double DD) Positive(double h, double w)
    {
        if (h >= w)
        {
            return (h, 1, 0);
        }

        if (h <= -w)
        {
            return (0, 0, 0);
        }

        double a = h + w;
        double b = (3 * w) - h;
        double scale = 16 * w * w * w;
        return (a * a * a * b / scale, a * a * ((3 * b) - a) / scale, 6 * a * (b - a) / scale);
    }
}
