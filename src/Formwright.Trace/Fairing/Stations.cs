using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>Gathers the points of one half into stations, one for each step of a curve that follows them.</summary>
internal static class Stations
{
    /// <summary>A point that lies this many times the usual scatter from its neighbours is a stray and is left out (tuned).</summary>
    private const double Stray = 5;

    /// <summary>Stations along a curve, in its order.</summary>
    internal static Station[] Of(GridCurve curve, ReadOnlySpan<Point> points)
    {
        (double S, double R)[] feet = Feet(curve, points);
        List<Station> stations = [];
        double[] sorted = new double[feet.Length];
        int from = 0;
        while (from < feet.Length)
        {
            int bin = BinOf(curve, feet[from].S);
            int to = from;
            while (to < feet.Length && BinOf(curve, feet[to].S) == bin)
            {
                sorted[to - from] = feet[to].R;
                to++;
            }

            Span<double> residuals = sorted.AsSpan(0, to - from);
            (double middle, double reach) = Reach(residuals);
            double sumS = 0;
            double sumR = 0;
            int count = 0;
            for (int i = from; i < to; i++)
            {
                if (Math.Abs(feet[i].R - middle) <= reach)
                {
                    sumS += feet[i].S;
                    sumR += feet[i].R;
                    count++;
                }
            }

            CurvePoint at = curve.At(sumS / count);
            stations.Add(new Station(at.Position + (at.Normal * (sumR / count)), count, false));
            from = to;
        }

        return [.. stations];
    }

    /// <summary>Arc length and distance of each point, in order of arc length.</summary>
    internal static (double S, double R)[] Feet(GridCurve curve, ReadOnlySpan<Point> points)
    {
        (double S, double R)[] feet = new (double, double)[points.Length];
        int hint = 0;
        for (int i = 0; i < points.Length; i++)
        {
            feet[i] = curve.Foot(points[i], ref hint);
        }

        Array.Sort(feet, (a, b) => a.S.CompareTo(b.S));
        return feet;
    }

    private static int BinOf(GridCurve curve, double s) => (int)Math.Round(s / curve.StepMm);

    private static (double Middle, double Reach) Reach(Span<double> residuals)
    {
        residuals.Sort();
        double middle = residuals[residuals.Length / 2];
        if (residuals.Length < 5)
        {
            return (middle, double.PositiveInfinity);
        }

        for (int i = 0; i < residuals.Length; i++)
        {
            residuals[i] = Math.Abs(residuals[i] - middle);
        }

        residuals.Sort();
        return (middle, Stray * Math.Max(1e-4, 1.4826 * residuals[residuals.Length / 2]));
    }
}
