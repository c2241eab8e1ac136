using System.Collections.Immutable;
using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Convex polygons, counter-clockwise.</summary>
internal static class ConvexPolygon
{
    /// <summary>The corners counter-clockwise.</summary>
    /// <exception cref="ArgumentException">They are not the corners of a convex polygon with an area.</exception>
    internal static ImmutableArray<Point> Checked(IEnumerable<Point> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        Point[] polygon = [.. corners];
        if (polygon.Length < 3 || !polygon.All(corner => corner.IsFinite))
        {
            throw new ArgumentException("Three finite corners are needed.", nameof(corners));
        }

        if (AreaMm2(polygon) < 0)
        {
            Array.Reverse(polygon);
        }

        double turned = 0;
        for (int i = 0; i < polygon.Length; i++)
        {
            Vector before = polygon[i] - polygon[(i + polygon.Length - 1) % polygon.Length];
            Vector after = polygon[(i + 1) % polygon.Length] - polygon[i];
            double turn = Math.Atan2(before.Cross(after), before.Dot(after));
            turned += turn;
            if (!(turn > -1e-9) || after.Length == 0)
            {
                throw new ArgumentException("The polygon is not convex.", nameof(corners));
            }
        }

        // Derived: a star turns twice around, a convex polygon once.
        return AreaMm2(polygon) > 0 && turned < 3 * Math.PI
            ? ImmutableArray.Create(polygon)
            : throw new ArgumentException("The polygon is not convex.", nameof(corners));
    }

    internal static double AreaMm2(ReadOnlySpan<Point> polygon)
    {
        double twice = 0;
        for (int i = 1; i + 1 < polygon.Length; i++)
        {
            twice += (polygon[i] - polygon[0]).Cross(polygon[i + 1] - polygon[0]);
        }

        return twice / 2;
    }

    /// <summary>The part of a polygon inside a convex one (Sutherland &amp; Hodgman, CACM 17, 1974).</summary>
    internal static Point[] Clip(ReadOnlySpan<Point> polygon, ReadOnlySpan<Point> inside)
    {
        List<Point> kept = [.. polygon];
        for (int i = 0; i < inside.Length && kept.Count > 0; i++)
        {
            Point from = inside[i];
            Vector side = inside[(i + 1) % inside.Length] - from;
            var next = new List<Point>(kept.Count + 1);
            for (int k = 0; k < kept.Count; k++)
            {
                Point a = kept[k];
                Point b = kept[(k + 1) % kept.Count];
                double atA = side.Cross(a - from);
                double atB = side.Cross(b - from);
                if (atA >= 0)
                {
                    next.Add(a);
                }

                if (atA > 0 != atB > 0 && atA != 0 && atB != 0)
                {
                    next.Add(a.Towards(b, atA / (atA - atB)));
                }
            }

            kept = next;
        }

        return kept.Count >= 3 ? [.. kept] : [];
    }
}
