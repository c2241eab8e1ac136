using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// Delaunay triangulation by inserting one point after another (Bowyer, Watson, Comput. J. 24, 1981). Places are rounded to whole steps of
/// a 2²⁴ raster and the tests are exact, so that points on a line or on a circle do no harm.
/// </summary>
internal sealed class Delaunay
{
    private const int Raster = 1 << 24;

    private readonly long[] x;
    private readonly long[] y;
    private readonly List<int> corners = [];
    private readonly List<int> across = [];
    private readonly List<bool> alive = [];
    private readonly List<int> free = [];
    private readonly List<int> cavity = [];
    private readonly List<(int From, int To, int Outside)> wall = [];
    private readonly List<int> mark = [];
    private int turn;
    private int last;

    private Delaunay(IReadOnlyList<Point> points)
    {
        Box box = Box.Empty;
        foreach (Point point in points)
        {
            box = box.With(point);
        }

        double scale = Raster / Math.Max(box.WidthMm, box.HeightMm);
        int count = points.Count;
        x = new long[count + 3];
        y = new long[count + 3];
        for (int i = 0; i < count; i++)
        {
            x[i] = (long)Math.Round((points[i].X - box.Min.X) * scale);
            y[i] = (long)Math.Round((points[i].Y - box.Min.Y) * scale);
        }

        // A triangle well around the raster; 27 bits, so that the exact tests stay within 128.
        (x[count], y[count]) = (-3L * Raster, -2L * Raster);
        (x[count + 1], y[count + 1]) = (4L * Raster, -2L * Raster);
        (x[count + 2], y[count + 2]) = (Raster / 2, 4L * Raster);
        Add(count, count + 1, count + 2);
    }

    /// <summary>Triangles of the points' convex surroundings, counter-clockwise, three numbers each.</summary>
    /// <exception cref="ArgumentException">Two points coincide.</exception>
    internal static int[] Triangulate(IReadOnlyList<Point> points)
    {
        var work = new Delaunay(points);
        for (int i = 0; i < points.Count; i++)
        {
            work.Insert(i);
        }

        var triangles = new List<int>();
        for (int t = 0; t < work.alive.Count; t++)
        {
            int a = work.corners[3 * t];
            int b = work.corners[(3 * t) + 1];
            int c = work.corners[(3 * t) + 2];
            if (work.alive[t] && Math.Max(a, Math.Max(b, c)) < points.Count)
            {
                triangles.AddRange([a, b, c]);
            }
        }

        return [.. triangles];
    }

    private void Insert(int point)
    {
        int start = Walk(point);
        turn++;
        cavity.Clear();
        wall.Clear();
        cavity.Add(start);
        mark[start] = turn;
        for (int at = 0; at < cavity.Count; at++)
        {
            int t = cavity[at];
            for (int side = 0; side < 3; side++)
            {
                int beyond = across[(3 * t) + side];
                if (beyond >= 0 && mark[beyond] == turn)
                {
                    continue;
                }

                if (beyond >= 0 && InCircle(beyond, point))
                {
                    mark[beyond] = turn;
                    cavity.Add(beyond);
                }
                else
                {
                    wall.Add(
                        (
                            corners[(3 * t) + ((side + 1) % 3)],
                            corners[(3 * t) + ((side + 2) % 3)],
                            beyond
                        )
                    );
                }
            }
        }

        Fill(point);
    }

    private void Fill(int point)
    {
        foreach (int t in cavity)
        {
            alive[t] = false;
            free.Add(t);
        }

        var byStart = new Dictionary<int, int>(wall.Count);
        int[] fresh = new int[wall.Count];
        for (int i = 0; i < wall.Count; i++)
        {
            (int from, int to, int outside) = wall[i];
            fresh[i] = Add(point, from, to);
            across[3 * fresh[i]] = outside;
            byStart.Add(from, fresh[i]);
            if (outside >= 0)
            {
                for (int side = 0; side < 3; side++)
                {
                    if (
                        corners[(3 * outside) + ((side + 1) % 3)] == to
                        && corners[(3 * outside) + ((side + 2) % 3)] == from
                    )
                    {
                        across[(3 * outside) + side] = fresh[i];
                    }
                }
            }
        }

        for (int i = 0; i < wall.Count; i++)
        {
            int next = byStart[wall[i].To];
            across[(3 * fresh[i]) + 1] = next;
            across[(3 * next) + 2] = fresh[i];
        }

        last = fresh[0];
    }

    private int Add(int a, int b, int c)
    {
        int t = alive.Count;
        if (free.Count > 0)
        {
            t = free[^1];
            free.RemoveAt(free.Count - 1);
            alive[t] = true;
            (corners[3 * t], corners[(3 * t) + 1], corners[(3 * t) + 2]) = (a, b, c);
            (across[3 * t], across[(3 * t) + 1], across[(3 * t) + 2]) = (-1, -1, -1);
            return t;
        }

        corners.AddRange([a, b, c]);
        across.AddRange([-1, -1, -1]);
        alive.Add(true);
        mark.Add(0);
        return t;
    }

    /// <summary>The triangle that holds a point, by walking towards it.</summary>
    private int Walk(int point)
    {
        int t = last;
        while (true)
        {
            int next = -1;
            for (int side = 0; side < 3 && next < 0; side++)
            {
                int from = corners[(3 * t) + ((side + 1) % 3)];
                int to = corners[(3 * t) + ((side + 2) % 3)];
                if (Turn(from, to, point) < 0)
                {
                    next = across[(3 * t) + side];
                }
            }

            if (next < 0)
            {
                for (int k = 0; k < 3; k++)
                {
                    int corner = corners[(3 * t) + k];
                    if (x[corner] == x[point] && y[corner] == y[point])
                    {
                        throw new ArgumentException($"Points {corner} and {point} coincide.");
                    }
                }

                return t;
            }

            t = next;
        }
    }

    private long Turn(int a, int b, int c) =>
        ((x[b] - x[a]) * (y[c] - y[a])) - ((y[b] - y[a]) * (x[c] - x[a]));

    private bool InCircle(int t, int point)
    {
        int a = corners[3 * t];
        int b = corners[(3 * t) + 1];
        int c = corners[(3 * t) + 2];
        long ax = x[a] - x[point];
        long ay = y[a] - y[point];
        long bx = x[b] - x[point];
        long by = y[b] - y[point];
        long cx = x[c] - x[point];
        long cy = y[c] - y[point];
        long bc = (bx * cy) - (by * cx);
        long ca = (cx * ay) - (cy * ax);
        long ab = (ax * by) - (ay * bx);
        long la = (ax * ax) + (ay * ay);
        long lb = (bx * bx) + (by * by);
        long lc = (cx * cx) + (cy * cy);
        double first = (double)la * bc;
        double second = (double)lb * ca;
        double third = (double)lc * ab;
        double sum = first + second + third;
        // Each term carries at most three roundings of 2⁻⁵³, the sum two more.
        double doubt = 1e-15 * (Math.Abs(first) + Math.Abs(second) + Math.Abs(third));
        return Math.Abs(sum) > doubt
            ? sum > 0
            : ((Int128)la * bc) + ((Int128)lb * ca) + ((Int128)lc * ab) > 0;
    }
}
