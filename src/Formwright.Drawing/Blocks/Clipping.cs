using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Cuts polylines at the sides of a box (Liang and Barsky 1984).</summary>
internal static class Clipping
{
    /// <summary>The runs of a polyline inside a box.</summary>
    public static IEnumerable<Shape> Inside(IReadOnlyList<Point> points, Box box)
    {
        List<Point> run = [];
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (Cut(points[i], points[i + 1], box) is not var (from, to, enters, leaves))
            {
                continue;
            }

            if (run.Count == 0 || enters)
            {
                if (run.Count > 1)
                {
                    yield return Shape.Polyline([.. run]);
                }

                run = [from];
            }

            run.Add(to);
            if (leaves)
            {
                yield return Shape.Polyline([.. run]);
                run = [];
            }
        }

        if (run.Count > 1)
        {
            yield return Shape.Polyline([.. run]);
        }
    }

    private static (Point From, Point To, bool Enters, bool Leaves)? Cut(Point a, Point b, Box box)
    {
        Vector d = b - a;
        double low = 0;
        double high = 1;
        if (
            !Side(-d.X, a.X - box.LeftMm)
            || !Side(d.X, box.RightMm - a.X)
            || !Side(-d.Y, a.Y - box.BottomMm)
            || !Side(d.Y, box.TopMm - a.Y)
        )
        {
            return null;
        }

        return (a + (low * d), a + (high * d), low > 0, high < 1);

        bool Side(double p, double q)
        {
            if (p == 0)
            {
                return q >= 0;
            }

            double r = q / p;
            if (p < 0)
            {
                low = Math.Max(low, r);
            }
            else
            {
                high = Math.Min(high, r);
            }

            return low < high;
        }
    }
}
