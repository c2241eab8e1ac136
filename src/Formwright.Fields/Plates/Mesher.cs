using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Joins the points to triangles and evens them out: each free point moves to the middle of its neighbours (Laplace), a few times.</summary>
internal static class Mesher
{
    private const int Rounds = 3;

    /// <summary>The triangles; null where the rim can't be kept with edges of this length, and where that is.</summary>
    internal static (Point[] Points, int[] Triangles)? Run(MeshPoints start, out Point fault)
    {
        Point[] points = [.. start.Points];
        for (int round = 0; ; round++)
        {
            if (Inside(points, start, out fault) is not int[] triangles)
            {
                return null;
            }

            if (round == Rounds)
            {
                return (points, triangles);
            }

            Even(points, triangles, start.FixedCount);
        }
    }

    private static int[]? Inside(Point[] points, MeshPoints start, out Point fault)
    {
        int[] all = Delaunay.Triangulate(points);
        var rim = new SegmentGrid(start.LengthMm);
        foreach (RimEdge edge in start.Edges)
        {
            rim.Add(points[edge.From], points[edge.To]);
        }

        var inside = new List<int>(all.Length);
        var sides = new HashSet<(int, int)>(all.Length);
        for (int t = 0; t < all.Length; t += 3)
        {
            Point a = points[all[t]];
            Vector ab = points[all[t + 1]] - a;
            Vector ac = points[all[t + 2]] - a;
            // Rounding may leave a triangle of no height between points of one straight rim.
            bool flat = !(ab.Cross(ac) > 1e-9 * Math.Max(ab.Dot(ab), ac.Dot(ac)));
            if (!flat && rim.Contains(a + ((ab + ac) * (1.0 / 3))))
            {
                inside.AddRange([all[t], all[t + 1], all[t + 2]]);
                sides.Add((all[t], all[t + 1]));
                sides.Add((all[t + 1], all[t + 2]));
                sides.Add((all[t + 2], all[t]));
            }
        }

        foreach (RimEdge edge in start.Edges)
        {
            fault = points[edge.From];
            if (!sides.Contains((edge.From, edge.To)) || sides.Contains((edge.To, edge.From)))
            {
                return null;
            }
        }

        fault = default;
        return [.. inside];
    }

    private static void Even(Point[] points, int[] triangles, int fixedCount)
    {
        var sums = new Vector[points.Length];
        int[] counts = new int[points.Length];
        for (int at = 0; at < triangles.Length; at++)
        {
            int next = triangles[at % 3 == 2 ? at - 2 : at + 1];
            int own = triangles[at];
            sums[own] += points[next] - Point.Origin;
            counts[own]++;
        }

        for (int i = fixedCount; i < points.Length; i++)
        {
            if (counts[i] > 0)
            {
                points[i] = Point.Origin + (sums[i] * (1.0 / counts[i]));
            }
        }
    }
}
