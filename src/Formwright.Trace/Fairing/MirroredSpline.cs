using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>
/// A cubic spline through places from the centreline to the centreline, over the length of its chords, such that it and its mirror
/// image make one smooth closed curve.
/// </summary>
internal sealed class MirroredSpline
{
    private readonly Point[] knots;
    private readonly double[] at;
    private readonly Vector[] bend;

    internal MirroredSpline(Point[] knots)
    {
        this.knots = knots;
        int n = knots.Length;
        at = new double[n];
        for (int i = 1; i < n; i++)
        {
            at[i] = at[i - 1] + Math.Max(1e-9, knots[i].DistanceTo(knots[i - 1]));
        }

        bend = new Vector[n];
        Solve();
    }

    /// <summary>The place at a share of the whole length of chords.</summary>
    internal Point At(double share)
    {
        double s = share * at[^1];
        int i = Array.BinarySearch(at, s);
        i = Math.Clamp(i >= 0 ? i : ~i - 1, 0, knots.Length - 2);
        double h = at[i + 1] - at[i];
        double b = (s - at[i]) / h;
        double a = 1 - b;
        double ca = ((a * a * a) - a) * h * h / 6;
        double cb = ((b * b * b) - b) * h * h / 6;
        return new(
            (a * knots[i].X) + (b * knots[i + 1].X) + (ca * bend[i].X) + (cb * bend[i + 1].X),
            (a * knots[i].Y) + (b * knots[i + 1].Y) + (ca * bend[i].Y) + (cb * bend[i + 1].Y)
        );
    }

    /// <summary>Second derivatives at the knots. At the ends x is even (x' = 0) and y is odd (y'' = 0).</summary>
    private void Solve()
    {
        int n = knots.Length;
        double[] x = Tridiagonal(i => knots[i].X, isEven: true);
        double[] y = Tridiagonal(i => knots[i].Y, isEven: false);
        for (int i = 0; i < n; i++)
        {
            bend[i] = new(x[i], y[i]);
        }
    }

    private double[] Tridiagonal(Func<int, double> value, bool isEven)
    {
        int n = knots.Length;
        double[] low = new double[n];
        double[] mid = new double[n];
        double[] high = new double[n];
        double[] right = new double[n];
        for (int i = 1; i < n - 1; i++)
        {
            double before = at[i] - at[i - 1];
            double after = at[i + 1] - at[i];
            low[i] = before;
            mid[i] = 2 * (before + after);
            high[i] = after;
            right[i] =
                6 * (((value(i + 1) - value(i)) / after) - ((value(i) - value(i - 1)) / before));
        }

        double first = at[1] - at[0];
        double last = at[n - 1] - at[n - 2];
        (mid[0], high[0], right[0]) = isEven
            ? (2 * first, first, 6 * (value(1) - value(0)) / first)
            : (1, 0, 0);
        (low[n - 1], mid[n - 1], right[n - 1]) = isEven
            ? (last, 2 * last, -6 * (value(n - 1) - value(n - 2)) / last)
            : (0, 1, 0);
        for (int i = 1; i < n; i++)
        {
            double factor = low[i] / mid[i - 1];
            mid[i] -= factor * high[i - 1];
            right[i] -= factor * right[i - 1];
        }

        double[] result = new double[n];
        for (int i = n - 1; i >= 0; i--)
        {
            result[i] = (right[i] - (i < n - 1 ? high[i] * result[i + 1] : 0)) / mid[i];
        }

        return result;
    }
}
