using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>
/// A smooth half outline as places at even arc lengths, mirrored in the centreline beyond both ends: the tangent is across it there.
/// It starts at the heel; left is outside.
/// </summary>
internal sealed class GridCurve
{
    private readonly Point[] places;
    private readonly Vector[] tangents;
    private readonly double[] kappa;

    private GridCurve(Point[] places, double stepMm)
    {
        this.places = places;
        StepMm = stepMm;
        int last = places.Length - 1;
        tangents = new Vector[places.Length];
        kappa = new double[places.Length];
        for (int i = 0; i <= last; i++)
        {
            Point before = i > 0 ? places[i - 1] : Mirrored(places[1]);
            Point after = i < last ? places[i + 1] : Mirrored(places[last - 1]);
            Vector across = after - before;
            double chord = across.Length;
            Vector a = places[i] - before;
            Vector b = after - places[i];
            tangents[i] = chord > 0 ? across * (1 / chord) : new Vector(1, 0);
            double product = a.Length * b.Length * chord;
            kappa[i] = product > 0 ? 2 * a.Cross(b) / product : 0;
        }
    }

    internal int Last => places.Length - 1;

    internal double StepMm { get; }

    internal double LengthMm => StepMm * Last;

    internal ReadOnlySpan<Point> Places => places;

    /// <summary>κ at the places, 1/mm, left positive.</summary>
    internal ReadOnlySpan<double> Kappa => kappa;

    internal Vector NormalAt(int i) => tangents[i].Left;

    /// <summary>The curve through some places from heel to tail, the ends put on the centreline.</summary>
    /// <param name="through">Three or more, in order.</param>
    /// <param name="steps">Into how many even steps it is divided.</param>
    internal static GridCurve Through(ReadOnlySpan<Point> through, int steps)
    {
        Point[] knots = through.ToArray();
        knots[0] = knots[0] with { Y = 0 };
        knots[^1] = knots[^1] with { Y = 0 };
        MirroredSpline spline = new(knots);
        // Fine places along the spline, then even arc lengths.
        int fine = Math.Max(4 * steps, 4 * knots.Length);
        Point[] dense = new Point[fine + 1];
        for (int i = 0; i <= fine; i++)
        {
            dense[i] = spline.At((double)i / fine);
        }

        return Even(dense, steps);
    }

    /// <summary>A chain from heel to tail as even places.</summary>
    internal static GridCurve Of(Chain half, int steps)
    {
        Point[] places = new Point[steps + 1];
        for (int i = 0; i <= steps; i++)
        {
            places[i] = half.At(half.LengthMm * i / steps).Position;
        }

        return new GridCurve(places, half.LengthMm / steps);
    }

    /// <summary>The curve moved along its normals (positive outwards), divided evenly again.</summary>
    internal GridCurve Moved(ReadOnlySpan<double> nu)
    {
        Point[] moved = new Point[places.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            moved[i] = places[i] + (NormalAt(i) * nu[i]);
        }

        return Even(moved, Last);
    }

    /// <summary>The place at an arc length; slightly beyond the ends the curve goes on mirrored.</summary>
    internal CurvePoint At(double s)
    {
        double at = Math.Clamp(s / StepMm, 0, Last);
        int i = Math.Min((int)at, Last - 1);
        double t = at - i;
        Point place = Between(places, i, t);
        Vector tangent = (tangents[i] * (1 - t)) + (tangents[i + 1] * t);
        return new(place, tangent.Angle, kappa[i] + (t * (kappa[i + 1] - kappa[i])));
    }

    /// <summary>Largest y at a station.</summary>
    internal double WidestAt(double u)
    {
        double widest = 0;
        for (int i = 0; i < Last; i++)
        {
            double a = places[i].X - u;
            double b = places[i + 1].X - u;
            if (a * b <= 0 && a != b)
            {
                widest = Math.Max(widest, Between(places, i, a / (a - b)).Y);
            }
        }

        return widest;
    }

    /// <summary>Arc length of the foot of a place and its distance, positive outside.</summary>
    /// <param name="place">The place.</param>
    /// <param name="hint">Index to start from; the index found.</param>
    internal (double S, double Distance) Foot(Point place, ref int hint)
    {
        int i = Math.Clamp(hint, 0, Last);
        double best = Squared(place, i);
        // Downhill; the walk over a few places more keeps it from resting on a point of noise.
        for (int reach = 1; reach <= 4; )
        {
            int other =
                i + reach <= Last && Squared(place, i + reach) < best ? i + reach
                : i - reach >= 0 && Squared(place, i - reach) < best ? i - reach
                : -1;
            if (other < 0)
            {
                reach++;
                continue;
            }

            (i, best, reach) = (other, Squared(place, other), 1);
        }

        hint = i;
        // Foot on the circle of curvature at the nearest place.
        Vector from = place - places[i];
        double along = from.Dot(tangents[i]);
        double across = from.Dot(tangents[i].Left);
        double k = kappa[i];
        double shrink = 1 - (k * across);
        double turn = Math.Abs(shrink) > 0.1 ? along / shrink : along;
        double d = across - (0.5 * k * along * along / (Math.Abs(shrink) > 0.1 ? shrink : 1));
        double s = (i * StepMm) + turn;
        return (Math.Clamp(s, 0, LengthMm), d);
    }

    private double Squared(Point place, int i)
    {
        double dx = place.X - places[i].X;
        double dy = place.Y - places[i].Y;
        return (dx * dx) + (dy * dy);
    }

    private static GridCurve Even(Point[] uneven, int steps)
    {
        int last = uneven.Length - 1;
        double[] arc = new double[uneven.Length];
        for (int i = 0; i < last; i++)
        {
            // Chord and the turning between its neighbours give the arc to the fourth order.
            Point before = i > 0 ? uneven[i - 1] : Mirrored(uneven[1]);
            Point after = i + 2 <= last ? uneven[i + 2] : Mirrored(uneven[last - 1]);
            double chord = uneven[i].DistanceTo(uneven[i + 1]);
            Vector first = uneven[i + 1] - before;
            Vector second = after - uneven[i];
            double product = first.Length * second.Length;
            double bend = product > 0 ? first.Cross(second) / product : 0;
            arc[i + 1] = arc[i] + (chord * (1 + (bend * bend / 24)));
        }

        Point[] even = new Point[steps + 1];
        even[0] = uneven[0] with { Y = 0 };
        even[steps] = uneven[last] with { Y = 0 };
        int at = 0;
        for (int k = 1; k < steps; k++)
        {
            double wanted = arc[last] * k / steps;
            while (at < last - 1 && arc[at + 1] < wanted)
            {
                at++;
            }

            double width = arc[at + 1] - arc[at];
            even[k] = Between(uneven, at, width > 0 ? (wanted - arc[at]) / width : 0);
        }

        return new GridCurve(even, arc[last] / steps);
    }

    /// <summary>Cubic through four neighbours (Lagrange), t between the middle two.</summary>
    private static Point Between(Point[] row, int i, double t)
    {
        Point a = i > 0 ? row[i - 1] : Mirrored(row[1]);
        Point b = row[i];
        Point c = row[i + 1];
        Point d = i + 2 < row.Length ? row[i + 2] : Mirrored(row[^2]);
        double wa = -t * (t - 1) * (t - 2) / 6;
        double wb = (t + 1) * (t - 1) * (t - 2) / 2;
        double wc = -(t + 1) * t * (t - 2) / 2;
        double wd = (t + 1) * t * (t - 1) / 6;
        return new(
            (wa * a.X) + (wb * b.X) + (wc * c.X) + (wd * d.X),
            (wa * a.Y) + (wb * b.Y) + (wc * c.Y) + (wd * d.Y)
        );
    }

    private static Point Mirrored(Point place) => place with { Y = -place.Y };
}
