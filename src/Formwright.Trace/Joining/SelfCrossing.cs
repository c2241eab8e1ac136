using Formwright.Curves;

namespace Formwright.Trace.Joining;

/// <summary>Finds where a curve crosses itself, whatever its noise: means of short stretches are compared, not points.</summary>
internal static class SelfCrossing
{
    private const int Stretches = 300;

    /// <summary>Stretches nearer than this along the curve are not compared.</summary>
    private const int Apart = 4;

    /// <summary>A place where the curve crosses itself, or null.</summary>
    internal static Point? Of(Point[] points, bool isClosed)
    {
        Point[] means = Means(points);
        int n = means.Length;
        int segments = isClosed ? n : n - 1;
        for (int i = 0; i < segments; i++)
        {
            Point a = means[i];
            Point b = means[(i + 1) % n];
            Box box = Box.Empty.With(a).With(b);
            for (int j = i + Apart; j < segments; j++)
            {
                if (isClosed && i + n - j < Apart)
                {
                    continue;
                }

                Point c = means[j];
                Point d = means[(j + 1) % n];
                Box other = Box.Empty.With(c).With(d);
                if (
                    box.Max.X >= other.Min.X
                    && other.Max.X >= box.Min.X
                    && box.Max.Y >= other.Min.Y
                    && other.Max.Y >= box.Min.Y
                    && (b - a).Cross(c - a) * (b - a).Cross(d - a) < 0
                    && (d - c).Cross(a - c) * (d - c).Cross(b - c) < 0
                )
                {
                    return a.Towards(b, 0.5);
                }
            }
        }

        return null;
    }

    private static Point[] Means(Point[] points)
    {
        double length = 0;
        int stride = Math.Max(1, points.Length / 200);
        for (int i = stride; i < points.Length; i += stride)
        {
            length += points[i].DistanceTo(points[i - stride]);
        }

        double group = length / Stretches;
        List<Point> means = [];
        int from = 0;
        for (int i = 1; i <= points.Length && means.Count < 20 * Stretches; i++)
        {
            if (i < points.Length && points[i].DistanceTo(points[from]) <= group)
            {
                continue;
            }

            Vector sum = default;
            for (int k = from; k < i; k++)
            {
                sum += points[k] - points[from];
            }

            means.Add(points[from] + (sum * (1.0 / (i - from))));
            from = i;
        }

        return [.. means];
    }
}
