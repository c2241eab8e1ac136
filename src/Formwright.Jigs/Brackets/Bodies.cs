using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>Distances of convex bodies as seen from above.</summary>
internal static class Bodies
{
    /// <summary>Distance between two convex polygons, mm; below 0, how far one must move to leave the other (separating axes).</summary>
    public static double Distance(IReadOnlyList<Point> a, IReadOnlyList<Point> b)
    {
        double deepest = Math.Max(Separation(a, b), Separation(b, a));
        if (deepest <= 0)
        {
            return deepest;
        }

        double least = double.PositiveInfinity;
        for (int i = 0; i < a.Count; i++)
        {
            for (int k = 0; k < b.Count; k++)
            {
                least = Math.Min(least, ToSegment(a[i], b[k], b[(k + 1) % b.Count]));
                least = Math.Min(least, ToSegment(b[k], a[i], a[(i + 1) % a.Count]));
            }
        }

        return least;
    }

    /// <summary>Distance of a place from a convex polygon, mm; below 0, how deep it is inside.</summary>
    public static double Distance(IReadOnlyList<Point> body, Point place)
    {
        double inside = double.NegativeInfinity;
        double outside = double.PositiveInfinity;
        for (int i = 0; i < body.Count; i++)
        {
            Point from = body[i];
            Point to = body[(i + 1) % body.Count];
            Vector side = to - from;
            inside = Math.Max(inside, -side.Cross(place - from) / side.Length);
            outside = Math.Min(outside, ToSegment(place, from, to));
        }

        return inside <= 0 ? inside : outside;
    }

    /// <summary>Distance of a place from a straight piece, mm.</summary>
    public static double ToSegment(Point place, Point from, Point to)
    {
        Vector side = to - from;
        double square = side.Dot(side);
        double share = square > 0 ? Math.Clamp((place - from).Dot(side) / square, 0, 1) : 0;
        return place.DistanceTo(from + (side * share));
    }

    /// <summary>Distance between two straight pieces, mm; 0 where they cross.</summary>
    public static double SegmentDistance(Point a, Point b, Point c, Point d)
    {
        Vector ab = b - a;
        Vector cd = d - c;
        bool crosses =
            ab.Cross(c - a) * ab.Cross(d - a) < 0 && cd.Cross(a - c) * cd.Cross(b - c) < 0;
        return crosses
            ? 0
            : Math.Min(
                Math.Min(ToSegment(a, c, d), ToSegment(b, c, d)),
                Math.Min(ToSegment(c, a, b), ToSegment(d, a, b))
            );
    }

    // Largest distance, over the sides of a, of all of b outside that side. Corners run counter-clockwise.
    private static double Separation(IReadOnlyList<Point> a, IReadOnlyList<Point> b)
    {
        double most = double.NegativeInfinity;
        for (int i = 0; i < a.Count; i++)
        {
            Vector side = a[(i + 1) % a.Count] - a[i];
            double length = side.Length;
            double least = double.PositiveInfinity;
            for (int k = 0; k < b.Count; k++)
            {
                least = Math.Min(least, -side.Cross(b[k] - a[i]) / length);
            }

            most = Math.Max(most, least);
        }

        return most;
    }
}
