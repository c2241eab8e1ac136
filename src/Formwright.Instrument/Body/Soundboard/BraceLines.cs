using Formwright.Curves;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>Straight lines against the room on the soundboard.</summary>
internal static class BraceLines
{
    /// <summary>
    /// The longest part of a line that keeps a distance from the outline, or null when less than a length is left. The distance is sampled every
    /// 2 mm and its ends are bisected.
    /// </summary>
    internal static (Point From, Point To)? Within(
        Outline outline,
        Point from,
        Point to,
        double distanceMm,
        double leastMm
    )
    {
        double length = from.DistanceTo(to);
        int steps = Math.Clamp((int)Math.Ceiling(length / 2), 1, 1000);
        int bestStart = 0;
        int bestEnd = -1;
        int start = -1;
        for (int i = 0; i <= steps + 1; i++)
        {
            bool inside =
                i <= steps && HasRoom(outline, from.Towards(to, (double)i / steps), distanceMm);
            if (inside && start < 0)
            {
                start = i;
            }
            else if (!inside && start >= 0)
            {
                (bestStart, bestEnd) =
                    i - 1 - start > bestEnd - bestStart ? (start, i - 1) : (bestStart, bestEnd);
                start = -1;
            }
        }

        if (bestEnd < bestStart)
        {
            return null;
        }

        double low = Edge(bestStart, -1);
        double high = Edge(bestEnd, 1);
        Point a = from.Towards(to, low);
        Point b = from.Towards(to, high);
        return a.DistanceTo(b) >= leastMm ? (a, b) : null;

        double Edge(int inside, int step)
        {
            double good = (double)inside / steps;
            double bad = (double)(inside + step) / steps;
            if (bad is < 0 or > 1)
            {
                return good;
            }

            for (int i = 0; i < 20; i++)
            {
                double middle = (good + bad) / 2;
                (good, bad) = HasRoom(outline, from.Towards(to, middle), distanceMm)
                    ? (middle, bad)
                    : (good, middle);
            }

            return good;
        }
    }

    /// <summary>Whether a place lies inside the outline by at least a distance.</summary>
    internal static bool HasRoom(Outline outline, Point place, double distanceMm)
    {
        // Half runs from heel to tail with the inside to its right.
        NearestPoint nearest = outline.Half.Nearest(new Point(place.X, Math.Abs(place.Y)));
        return place.X > 0
            && place.X < outline.BodyLengthMm
            && -nearest.SignedDistanceMm >= distanceMm;
    }

    /// <summary>Where two lines of straight pieces cross, with the length along the first; ends that touch do not count.</summary>
    internal static IEnumerable<(double AlongMm, Point Place)> Crossings(
        IReadOnlyList<Point> a,
        IReadOnlyList<Point> b
    )
    {
        double before = 0;
        for (int i = 1; i < a.Count; i++)
        {
            Vector da = a[i] - a[i - 1];
            for (int j = 1; j < b.Count; j++)
            {
                Vector db = b[j] - b[j - 1];
                double cross = da.Cross(db);
                if (Math.Abs(cross) < 1e-9 * da.Length * db.Length)
                {
                    continue;
                }

                Vector gap = b[j - 1] - a[i - 1];
                double t = gap.Cross(db) / cross;
                double s = gap.Cross(da) / cross;
                if (t > 1e-6 && t < 1 - 1e-6 && s > 1e-6 && s < 1 - 1e-6)
                {
                    yield return (before + (t * da.Length), a[i - 1] + (da * t));
                }
            }

            before += da.Length;
        }
    }

    /// <summary>Least distance of a place from a line of straight pieces, mm.</summary>
    internal static double Distance(IReadOnlyList<Point> line, Point place)
    {
        double least = double.PositiveInfinity;
        for (int i = 1; i < line.Count; i++)
        {
            Vector d = line[i] - line[i - 1];
            double t = Math.Clamp((place - line[i - 1]).Dot(d) / d.Dot(d), 0, 1);
            least = Math.Min(least, (line[i - 1] + (d * t)).DistanceTo(place));
        }

        return least;
    }
}
