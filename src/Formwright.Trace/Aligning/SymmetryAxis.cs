using Formwright.Curves;
using Formwright.Trace.Fairing;

namespace Formwright.Trace.Aligning;

/// <summary>
/// Finds the line about which a closed curve is its own mirror image best: directions all around through the centroid to begin with, then
/// each point is reflected, its nearest place sought, and turn and shift are solved for by robust least squares, again and again
/// (iterative closest points, Besl &amp; McKay 1992, for a reflection).
/// </summary>
internal sealed class SymmetryAxis
{
    private const int Samples = 240;
    private const int Directions = 36;
    private const int MostRounds = 25;

    /// <summary>Two axes are equally good when their residuals differ by less than this, mm: then the longer one is the centreline.</summary>
    private const double EvenMm = 0.02;

    private readonly Point[] points;

    private SymmetryAxis(Point[] points) => this.points = points;

    /// <summary>A place on the axis, its direction, and the root mean square of half the distance of mirrored points from the curve.</summary>
    internal static (Point Place, double Angle, double ResidualMm) Of(Point[] closed)
    {
        SymmetryAxis axis = new(Resampled(closed));
        return axis.Run();
    }

    private (Point Place, double Angle, double ResidualMm) Run()
    {
        Point centre = Centroid(points);
        List<(double Far, double Angle)> tried = [];
        for (int k = 0; k < Directions; k++)
        {
            double angle = Math.PI * k / Directions;
            tried.Add((Mean(centre, angle, stride: 4), angle));
        }

        // Local bests of the sweep, refined.
        (Point Place, double Angle, double ResidualMm)? best = null;
        double bestExtent = 0;
        for (int k = 0; k < Directions; k++)
        {
            if (
                tried[k].Far > tried[(k + 1) % Directions].Far
                || tried[k].Far > tried[(k + Directions - 1) % Directions].Far
            )
            {
                continue;
            }

            (Point Place, double Angle, double ResidualMm) refined = Refine(centre, tried[k].Angle);
            double extent = Extent(refined.Angle);
            bool isBetter =
                best is not { } known
                || refined.ResidualMm < known.ResidualMm - EvenMm
                || (refined.ResidualMm < known.ResidualMm + EvenMm && extent > 1.001 * bestExtent);
            if (isBetter)
            {
                (best, bestExtent) = (refined, extent);
            }
        }

        return best ?? Refine(centre, 0);
    }

    private (Point Place, double Angle, double ResidualMm) Refine(Point place, double angle)
    {
        double residual = double.PositiveInfinity;
        for (int round = 0; round < MostRounds; round++)
        {
            Vector along = Vector.At(angle);
            Vector across = along.Left;
            double[] distances = new double[points.Length];
            (double A, double B)[] slopes = new (double, double)[points.Length];
            for (int i = 0; i < points.Length; i++)
            {
                Vector from = points[i] - place;
                double away = from.Dot(across);
                Point mirrored = points[i] - (across * (2 * away));
                (double distance, Vector normal) = Nearest(mirrored);
                distances[i] = distance;
                // The axis moved by c across: the mirror image moves by 2c. Turned by φ about the place: the image turns by 2φ.
                slopes[i] = (2 * across.Dot(normal), 2 * (mirrored - place).Left.Dot(normal));
            }

            double[] sizes = [.. distances.Select(Math.Abs)];
            Array.Sort(sizes);
            double reach = Math.Max(0.05, 4.685 * 1.4826 * sizes[sizes.Length / 2]);
            double aa = 0;
            double ab = 0;
            double bb = 0;
            double ar = 0;
            double br = 0;
            double sum = 0;
            for (int i = 0; i < points.Length; i++)
            {
                double trust = Settling.Trust(distances[i], reach);
                (double a, double b) = slopes[i];
                aa += trust * a * a;
                ab += trust * a * b;
                bb += trust * b * b;
                ar -= trust * a * distances[i];
                br -= trust * b * distances[i];
                sum += distances[i] * distances[i];
            }

            residual = 0.5 * Math.Sqrt(sum / points.Length);
            double det = (aa * bb) - (ab * ab);
            if (!(det > 1e-12 * aa * bb))
            {
                break;
            }

            double shift = ((bb * ar) - (ab * br)) / det;
            double turn = Math.Clamp(((aa * br) - (ab * ar)) / det, -0.2, 0.2);
            place += across * shift;
            angle += turn;
            if (Math.Abs(shift) < 1e-5 && Math.Abs(turn) < 1e-8)
            {
                break;
            }
        }

        return (place, angle, residual);
    }

    private double Mean(Point place, double angle, int stride)
    {
        Vector across = Vector.At(angle).Left;
        double sum = 0;
        for (int i = 0; i < points.Length; i += stride)
        {
            Vector from = points[i] - place;
            sum += Math.Abs(Nearest(points[i] - (across * (2 * from.Dot(across)))).Distance);
        }

        return sum;
    }

    private double Extent(double angle)
    {
        Vector along = Vector.At(angle);
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Point point in points)
        {
            double at = (point - Point.Origin).Dot(along);
            low = Math.Min(low, at);
            high = Math.Max(high, at);
        }

        return high - low;
    }

    /// <summary>Signed distance from the curve at the nearest of its points, and the normal there.</summary>
    private (double Distance, Vector Normal) Nearest(Point place)
    {
        int best = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i < points.Length; i++)
        {
            double dx = place.X - points[i].X;
            double dy = place.Y - points[i].Y;
            double squared = (dx * dx) + (dy * dy);
            if (squared < least)
            {
                (least, best) = (squared, i);
            }
        }

        Point before = points[(best + points.Length - 1) % points.Length];
        Point after = points[(best + 1) % points.Length];
        Vector chord = after - before;
        double length = chord.Length;
        if (length == 0)
        {
            return (Math.Sqrt(least), new Vector(0, 1));
        }

        Vector tangent = chord * (1 / length);
        Vector from = place - points[best];
        double along = from.Dot(tangent);
        // Circle through the three points.
        double bend =
            2
            * (points[best] - before).Cross(after - points[best])
            / (points[best].DistanceTo(before) * after.DistanceTo(points[best]) * length);
        double distance = from.Dot(tangent.Left) - (0.5 * bend * along * along);
        return double.IsFinite(distance)
            ? (distance, tangent.Left)
            : (from.Dot(tangent.Left), tangent.Left);
    }

    private static Point Centroid(Point[] points)
    {
        Vector sum = default;
        foreach (Point point in points)
        {
            sum += point - points[0];
        }

        return points[0] + (sum * (1.0 / points.Length));
    }

    /// <summary>Means of the points over even stretches of a closed curve, so that dense places weigh no more than others.</summary>
    private static Point[] Resampled(Point[] closed)
    {
        double length = 0;
        int stride = Math.Max(1, closed.Length / Samples);
        for (int i = 0; i < closed.Length; i += stride)
        {
            length += closed[i].DistanceTo(closed[(i + stride) % closed.Length]);
        }

        double group = length / Samples;
        List<Point> means = [];
        int from = 0;
        for (int i = 1; i <= closed.Length; i++)
        {
            if (i < closed.Length && closed[i].DistanceTo(closed[from]) <= group)
            {
                continue;
            }

            Vector sum = default;
            for (int k = from; k < i; k++)
            {
                sum += closed[k] - closed[from];
            }

            means.Add(closed[from] + (sum * (1.0 / (i - from))));
            // Long chords are walked along.
            if (i < closed.Length)
            {
                Point a = closed[i - 1];
                double chord = a.DistanceTo(closed[i]);
                int parts = (int)Math.Min(Samples, chord / group);
                for (int k = 1; k < parts; k++)
                {
                    means.Add(a.Towards(closed[i], (double)k / parts));
                }
            }

            from = i;
        }

        return [.. means];
    }
}
