using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Points sorted into squares, to find whether one is near.</summary>
internal sealed class PointGrid(double cellMm)
{
    private readonly Dictionary<(int, int), List<Point>> cells = [];

    internal void Add(Point place)
    {
        (int, int) cell = CellOf(place);
        if (!cells.TryGetValue(cell, out List<Point>? list))
        {
            cells[cell] = list = [];
        }

        list.Add(place);
    }

    /// <summary>Distance to the nearest point if that is within a cell's width, else infinite, mm.</summary>
    internal double DistanceTo(Point place)
    {
        (int column, int row) = CellOf(place);
        double nearest = double.PositiveInfinity;
        for (int i = column - 1; i <= column + 1; i++)
        {
            for (int j = row - 1; j <= row + 1; j++)
            {
                foreach (Point other in cells.GetValueOrDefault((i, j)) ?? [])
                {
                    nearest = Math.Min(nearest, place.DistanceTo(other));
                }
            }
        }

        return nearest <= cellMm ? nearest : double.PositiveInfinity;
    }

    private (int, int) CellOf(Point place) =>
        ((int)Math.Floor(place.X / cellMm), (int)Math.Floor(place.Y / cellMm));
}
