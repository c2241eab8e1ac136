using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>The straight edges of closed loops, sorted into squares: how far away they are, and which side a place is on.</summary>
internal sealed class SegmentGrid(double cellMm)
{
    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly Dictionary<int, List<int>> bands = [];
    private readonly List<(Point From, Point To)> segments = [];

    internal void Add(Point from, Point to)
    {
        int number = segments.Count;
        segments.Add((from, to));
        (int left, int right) = Range(from.X, to.X);
        (int low, int high) = Range(from.Y, to.Y);
        for (int row = low; row <= high; row++)
        {
            Into(bands, row, number);
            for (int column = left; column <= right; column++)
            {
                Into(cells, (column, row), number);
            }
        }
    }

    /// <summary>Whether a place lies inside an odd number of the loops.</summary>
    internal bool Contains(Point place)
    {
        bool inside = false;
        foreach (int number in bands.GetValueOrDefault(Cell(place.Y)) ?? [])
        {
            (Point a, Point b) = segments[number];
            if (
                a.Y > place.Y != b.Y > place.Y
                && place.X < a.X + ((b.X - a.X) * (place.Y - a.Y) / (b.Y - a.Y))
            )
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Distance to the nearest segment if that is within a cell's width, else infinite, mm.</summary>
    internal double DistanceTo(Point place)
    {
        double nearest = double.PositiveInfinity;
        int column = Cell(place.X);
        int row = Cell(place.Y);
        for (int i = column - 1; i <= column + 1; i++)
        {
            for (int j = row - 1; j <= row + 1; j++)
            {
                foreach (int number in cells.GetValueOrDefault((i, j)) ?? [])
                {
                    (Point a, Point b) = segments[number];
                    Vector side = b - a;
                    double share = Math.Clamp((place - a).Dot(side) / side.Dot(side), 0, 1);
                    nearest = Math.Min(nearest, place.DistanceTo(a.Towards(b, share)));
                }
            }
        }

        return nearest <= cellMm ? nearest : double.PositiveInfinity;
    }

    private static void Into<TKey>(Dictionary<TKey, List<int>> map, TKey key, int number)
        where TKey : notnull
    {
        if (!map.TryGetValue(key, out List<int>? list))
        {
            map[key] = list = [];
        }

        list.Add(number);
    }

    private (int, int) Range(double a, double b) => (Cell(Math.Min(a, b)), Cell(Math.Max(a, b)));

    private int Cell(double value) => (int)Math.Floor(value / cellMm);
}
