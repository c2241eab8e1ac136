using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// A height field from values at the nodes of a square grid, joined by a bicubic B-spline: height, slope and curvature
/// are continuous everywhere inside the region.
/// </summary>
/// <remarks>
/// The spline is the local quasi-interpolant (de Boor &amp; Fix 1973) with coefficients c = u - δ²u/6 along each axis; it
/// repeats cubics exactly and lies within O(step⁴) of smooth data. Values beyond a curved edge continue those inside,
/// so that a place at the edge is as good as one in the middle; what is finer than two steps (a slit, a tip) is not resolved.
/// </remarks>
public sealed class HeightField : IHeightField
{
    private const int NewtonSteps = 20;

    private readonly NodeArray coefficients;

    internal HeightField(Region region, NodeArray values)
    {
        Region = region;
        coefficients = SplineCoefficients.Of(values);
        Peak = FindPeak(values);
    }

    public Region Region { get; }

    public HeightPeak Peak { get; }

    /// <summary>Step of the grid, mm.</summary>
    public double StepMm => coefficients.StepMm;

    public double HeightAt(Point place) => Region.Contains(place) ? Spline(place).HeightMm : 0;

    public HeightSample At(Point place) => Region.Contains(place) ? Spline(place) : default;

    /// <summary>The spline itself, also a little beyond the edge.</summary>
    internal HeightSample Spline(Point place)
    {
        double x = (place.X / StepMm) - coefficients.FirstX;
        double y = (place.Y / StepMm) - coefficients.FirstY;
        int column = (int)Math.Floor(x);
        int row = (int)Math.Floor(y);
        if (
            column < 1
            || row < 1
            || column > coefficients.Columns - 3
            || row > coefficients.Rows - 3
        )
        {
            return default;
        }
        Span<double> wx = stackalloc double[12];
        Span<double> wy = stackalloc double[12];
        Weights(x - column, wx);
        Weights(y - row, wy);
        double z = 0;
        double zx = 0;
        double zy = 0;
        double zxx = 0;
        double zxy = 0;
        double zyy = 0;
        for (int j = 0; j < 4; j++)
        {
            ReadOnlySpan<double> c = coefficients.Row(row - 1 + j).Slice(column - 1, 4);
            double v = (c[0] * wx[0]) + (c[1] * wx[1]) + (c[2] * wx[2]) + (c[3] * wx[3]);
            double vx = (c[0] * wx[4]) + (c[1] * wx[5]) + (c[2] * wx[6]) + (c[3] * wx[7]);
            double vxx = (c[0] * wx[8]) + (c[1] * wx[9]) + (c[2] * wx[10]) + (c[3] * wx[11]);
            z += v * wy[j];
            zx += vx * wy[j];
            zxx += vxx * wy[j];
            zy += v * wy[4 + j];
            zxy += vx * wy[4 + j];
            zyy += v * wy[8 + j];
        }
        double perStep = 1 / StepMm;
        return new(
            z,
            new Vector(zx, zy) * perStep,
            zxx * perStep * perStep,
            zxy * perStep * perStep,
            zyy * perStep * perStep
        );
    }

    /// <summary>Weights of a uniform cubic B-spline: four for the value, four for its first and four for its second derivative.</summary>
    private static void Weights(double t, Span<double> w)
    {
        double s = 1 - t;
        w[0] = s * s * s / 6;
        w[1] = (2.0 / 3) - (t * t * (1 - (t / 2)));
        w[2] = (2.0 / 3) - (s * s * (1 - (s / 2)));
        w[3] = t * t * t / 6;
        w[4] = -s * s / 2;
        w[5] = t * ((1.5 * t) - 2);
        w[6] = -s * ((1.5 * s) - 2);
        w[7] = t * t / 2;
        w[8] = s;
        w[9] = (3 * t) - 2;
        w[10] = (3 * s) - 2;
        w[11] = t;
    }

    private HeightPeak FindPeak(NodeArray values)
    {
        Point start = values.LargestInside();
        Point place = start;
        double best = Spline(start).HeightMm;
        for (int i = 0; i < NewtonSteps; i++)
        {
            HeightSample s = Spline(place);
            double det = (s.Zxx * s.Zyy) - (s.Zxy * s.Zxy);
            // Only a summit is looked for: elsewhere the best node stands.
            if (!(det > 0) || s.Zxx >= 0)
            {
                break;
            }
            Vector step = new(
                ((s.Zxy * s.Slope.Y) - (s.Zyy * s.Slope.X)) / det,
                ((s.Zxy * s.Slope.X) - (s.Zxx * s.Slope.Y)) / det
            );
            Point next = place + step;
            if (!(next.DistanceTo(start) < 2 * StepMm) || !Region.Contains(next))
            {
                break;
            }
            place = next;
            if (step.Length < 1e-9 * StepMm)
            {
                break;
            }
        }
        double height = Spline(place).HeightMm;
        return height >= best ? new(place, height) : new(start, best);
    }
}
