using Formwright.Curves;

namespace Formwright.Fields.Tests;

/// <summary>Regions for tests and benchmarks, and the closed forms of the membrane over them.</summary>
internal static class Shapes
{
    internal static Point Turned(double x, double y, double angle, Point shift) =>
        shift + new Vector(x, y).Turned(angle);

    internal static Region Square(double side, double angle = 0, Point shift = default)
    {
        double a = side / 2;
        return Region.Of([
            Turned(-a, -a, angle, shift),
            Turned(a, -a, angle, shift),
            Turned(a, a, angle, shift),
            Turned(-a, a, angle, shift),
        ]);
    }

    /// <summary>u over a square round the origin: the series of separated waves (Timoshenko &amp; Goodier, torsion of a square bar).</summary>
    internal static double SquareU(double side, double x, double y)
    {
        // The square is its own mirror on the diagonal: across the nearer axis the waves die out sooner.
        if (Math.Abs(x) > Math.Abs(y))
        {
            (x, y) = (y, x);
        }
        double u = ((side * side / 4) - (y * y)) / 2;
        for (int n = 1; n < 400; n += 2)
        {
            double k = n * Math.PI / side;
            // cosh(kx)/cosh(k side/2) without overflow
            double share =
                (
                    Math.Exp(k * (Math.Abs(x) - (side / 2)))
                    + Math.Exp(-k * (Math.Abs(x) + (side / 2)))
                ) / (1 + Math.Exp(-k * side));
            if (share < 1e-15)
            {
                break;
            }
            double sign = n % 4 == 1 ? 1 : -1;
            u -= 4 * side * side * sign * share * Math.Cos(k * y) / (Math.Pow(Math.PI * n, 3));
        }
        return u;
    }

    /// <summary>An ellipse; the polyline's sagitta is below 1e-9 of its size for 100 000 points.</summary>
    internal static Region Ellipse(
        double a,
        double b,
        double angle = 0,
        Point shift = default,
        int points = 20_000
    ) => Region.Of(Loop(points, t => Turned(a * Math.Cos(t), b * Math.Sin(t), angle, shift)));

    /// <summary>u over an ellipse, in its own axes.</summary>
    internal static double EllipseU(double a, double b, double x, double y) =>
        (1 - (x * x / (a * a)) - (y * y / (b * b))) * a * a * b * b / (2 * ((a * a) + (b * b)));

    internal static Region Annulus(double inner, double outer, Point shift) =>
        Region.OfLoops([
            Loop(20_000, t => shift + (outer * Vector.At(t))),
            Loop(20_000, t => shift + (inner * Vector.At(t))),
        ]);

    /// <summary>u between two circles: a quadratic and a logarithm.</summary>
    internal static double AnnulusU(double inner, double outer, double r) =>
        (((outer * outer) - (r * r)) / 4)
        - (((outer * outer) - (inner * inner)) / 4 * Math.Log(outer / r) / Math.Log(outer / inner));

    /// <summary>
    /// A region with a wavy edge and its exact u = R²((1 - ρ²)/4 + c ρᵏ cos kθ), ρ = r/R: any harmonic function may be added
    /// to -r²/4, and the region is where the sum is positive.
    /// </summary>
    internal static Region Wavy(double radius, double c, int k, double angle, Point shift) =>
        Region.Of(
            Loop(
                40_000,
                t =>
                {
                    double low = 0.5;
                    double high = 1.3;
                    for (int i = 0; i < 45; i++)
                    {
                        double middle = (low + high) / 2;
                        (low, high) =
                            WavyShare(c, k, middle, t) > 0 ? (middle, high) : (low, middle);
                    }
                    return shift + (radius * low * Vector.At(t + angle));
                }
            )
        );

    internal static double WavyU(double radius, double c, int k, double angle, Vector fromMiddle) =>
        radius * radius * WavyShare(c, k, fromMiddle.Length / radius, fromMiddle.Angle - angle);

    /// <summary>
    /// Half a guitar of invented stations (upper bout, waist, lower bout), mirrored, moved inward by a rim: the sine series
    /// of least Σk⁴b² with those widths and level tangents there.
    /// </summary>
    internal static Region Guitar(double rimMm, int points = 4000)
    {
        const double length = 488;
        double[] b =
        [
            173.381,
            -20.267,
            27.353,
            9.425,
            -9.073,
            -5.576,
            2.354,
            2.810,
            .310,
            -.809,
            -.917,
            -.253,
        ];
        return Region.Of(
            Loop(
                points,
                t =>
                {
                    double y = 0;
                    double dy = 0;
                    for (int k = 1; k <= b.Length; k++)
                    {
                        y += b[k - 1] * Math.Sin(k * t);
                        dy += k * b[k - 1] * Math.Cos(k * t);
                    }
                    var along = new Vector(length / 2 * Math.Sin(t), dy);
                    return new Point(length / 2 * (1 - Math.Cos(t)), y)
                        - (along.Left * (rimMm / along.Length));
                }
            ),
            0.01
        );
    }

    /// <summary>Places inside a region, the same for a seed.</summary>
    internal static Point[] Places(Region region, int count, int seed = 1)
    {
        var random = new Random(seed);
        var places = new List<Point>();
        while (places.Count < count)
        {
            Point place = new(
                region.Bounds.Min.X + (random.NextDouble() * region.Bounds.WidthMm),
                region.Bounds.Min.Y + (random.NextDouble() * region.Bounds.HeightMm)
            );
            if (region.Contains(place))
            {
                places.Add(place);
            }
        }
        return [.. places];
    }

    private static double WavyShare(double c, int k, double rho, double t) =>
        ((1 - (rho * rho)) / 4) + (c * Math.Pow(rho, k) * Math.Cos(k * t));

    private static Point[] Loop(int points, Func<double, Point> at)
    {
        // Half a step off, so that no corner lies on an axis by chance.
        return [.. Enumerable.Range(0, points).Select(i => at(2 * Math.PI * (i + 0.5) / points))];
    }
}
