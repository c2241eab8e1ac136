using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Finds the element at a place.</summary>
internal sealed class PlateLocator
{
    // Derived: the arc of a rim edge stands out from its chord by no more than this share of the triangle's height for turns up to 0.6 rad.
    private const double Beyond = 0.12;

    private readonly PlateTriangles triangles;
    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly double cellMm;

    internal PlateLocator(PlateTriangles triangles)
    {
        this.triangles = triangles;
        double area = 0;
        Box[] boxes = new Box[triangles.Count];
        for (int e = 0; e < triangles.Count; e++)
        {
            ReadOnlySpan<Point> corners = triangles[e].Corners;
            boxes[e] = Box.Empty.With(corners[0]).With(corners[1]).With(corners[2]);
            area += ConvexPolygon.AreaMm2(corners);
        }

        cellMm = Math.Sqrt(2 * area / triangles.Count);
        for (int e = 0; e < triangles.Count; e++)
        {
            Box box = boxes[e].Grown(Beyond * Math.Max(boxes[e].WidthMm, boxes[e].HeightMm));
            (int left, int low) = CellOf(box.Min);
            (int right, int high) = CellOf(box.Max);
            for (int i = left; i <= right; i++)
            {
                for (int j = low; j <= high; j++)
                {
                    if (!cells.TryGetValue((i, j), out List<int>? list))
                    {
                        cells[(i, j)] = list = [];
                    }

                    list.Add(e);
                }
            }
        }
    }

    /// <summary>The element and part at a place; null off the plate.</summary>
    internal (int Element, int Part)? Find(Point place)
    {
        int nearest = -1;
        double least = double.NegativeInfinity;
        foreach (int e in cells.GetValueOrDefault(CellOf(place)) ?? [])
        {
            (double a, double b, double c) = triangles[e].Barycentric(place);
            double smallest = Math.Min(a, Math.Min(b, c));
            if (smallest > least)
            {
                least = smallest;
                nearest = e;
            }
        }

        if (nearest < 0)
        {
            return null;
        }

        int part = triangles[nearest].PartOf(place);
        return least >= -1e-9 || (least >= -Beyond && IsWithinArc(nearest, part, place))
            ? (nearest, part)
            : null;
    }

    /// <summary>Whether a place beyond an edge still lies on the plate's side of the rim's curve.</summary>
    private bool IsWithinArc(int e, int part, Point place)
    {
        if (triangles.RimOf(e, part) is not { IsCurved: true } rim)
        {
            return false;
        }

        Point[] corners = triangles[e].Part(part);
        Vector chord = corners[1] - corners[0];
        double share = Math.Clamp((place - corners[0]).Dot(chord) / chord.Dot(chord), 0, 1);
        (Point on, Vector run) = triangles.OnCurve(rim, share);
        return run.Cross(place - on) >= -1e-9 * chord.Length * run.Length;
    }

    private (int, int) CellOf(Point place) =>
        ((int)Math.Floor(place.X / cellMm), (int)Math.Floor(place.Y / cellMm));
}
