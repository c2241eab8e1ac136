using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>What a loop must be, and plain measures of it.</summary>
internal static class LoopRules
{
    /// <summary>The loop without repeated points.</summary>
    /// <exception cref="ArgumentException">A point is not finite or far out, or fewer than three differ.</exception>
    internal static Point[] Cleaned(IReadOnlyList<Point> loop, int number)
    {
        ArgumentNullException.ThrowIfNull(loop);
        var kept = new List<Point>(loop.Count);
        foreach (Point place in loop)
        {
            if (!(Math.Max(Math.Abs(place.X), Math.Abs(place.Y)) <= Region.LargestCoordinateMm))
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"Loop {number} has a point ({place.X}, {place.Y}) that is not finite or lies beyond {Region.LargestCoordinateMm} mm."
                    ),
                    nameof(loop)
                );
            }
            if (kept.Count == 0 || kept[^1] != place)
            {
                kept.Add(place);
            }
        }
        while (kept.Count > 1 && kept[^1] == kept[0])
        {
            kept.RemoveAt(kept.Count - 1);
        }
        if (kept.Count < 3)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"Loop {number} has {kept.Count} different points; three are needed."
                ),
                nameof(loop)
            );
        }
        return [.. kept];
    }

    /// <summary>Turns the loops so that outer ones run counter-clockwise and holes clockwise.</summary>
    /// <exception cref="ArgumentException">A loop encloses no area.</exception>
    internal static void Orient(Point[][] loops)
    {
        for (int i = 0; i < loops.Length; i++)
        {
            double area = SignedArea(loops[i]);
            if (area == 0)
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Loop {i} encloses no area."),
                    nameof(loops)
                );
            }
            // Loops do not cross, so any point of one tells how deep it lies in the others.
            int depth = 0;
            for (int other = 0; other < loops.Length; other++)
            {
                if (other != i && Encloses(loops[other], loops[i][0]))
                {
                    depth++;
                }
            }
            if (area > 0 == (depth % 2 == 1))
            {
                Array.Reverse(loops[i]);
            }
        }
    }

    /// <summary>Area, mm², positive when the loop runs counter-clockwise.</summary>
    internal static double SignedArea(IReadOnlyList<Point> loop)
    {
        // Taken from the first point, so that a loop far from the origin loses no digits.
        double twice = 0;
        for (int i = 1; i + 1 < loop.Count; i++)
        {
            twice += (loop[i] - loop[0]).Cross(loop[i + 1] - loop[0]);
        }
        return twice / 2;
    }

    internal static double Length(IReadOnlyList<Point> loop)
    {
        double length = loop[^1].DistanceTo(loop[0]);
        for (int i = 1; i < loop.Count; i++)
        {
            length += loop[i - 1].DistanceTo(loop[i]);
        }
        return length;
    }

    private static bool Encloses(Point[] loop, Point place)
    {
        bool inside = false;
        for (int i = 0, j = loop.Length - 1; i < loop.Length; j = i++)
        {
            (Point a, Point b) = loop[i].Y <= loop[j].Y ? (loop[i], loop[j]) : (loop[j], loop[i]);
            if (a.Y <= place.Y && place.Y < b.Y && (b - a).Cross(place - a) > 0)
            {
                inside = !inside;
            }
        }
        return inside;
    }
}
