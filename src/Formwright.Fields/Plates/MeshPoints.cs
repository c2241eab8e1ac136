using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// Vertices for a mesh of a given edge length: equal steps along the rim and its holes, along the lines that the mesh should follow, and a
/// lattice of equilateral triangles between them, symmetric about the middle of the plate.
/// </summary>
internal sealed class MeshPoints
{
    // Tuned for the smallest angles of the meshes in the tests.
    private const double TurningPerEdgeRad = 0.6;
    private const double LatticeFromRim = 0.62;
    private const double LatticeFromLine = 0.55;
    private const double LineFromFixed = 0.55;

    private readonly List<Point> points = [];
    private readonly List<RimEdge> edges = [];
    private readonly double length;
    private readonly PointGrid grid;
    private readonly SegmentGrid rim;

    internal MeshPoints(
        IReadOnlyList<RimLoop> loops,
        IReadOnlyList<IReadOnlyList<Point>> lines,
        double edgeLengthMm
    )
    {
        length = edgeLengthMm;
        grid = new(edgeLengthMm);
        rim = new(edgeLengthMm);
        foreach (RimLoop loop in loops)
        {
            AddLoop(loop);
        }

        foreach (RimEdge edge in edges)
        {
            rim.Add(points[edge.From], points[edge.To]);
        }

        for (int i = 0; i < points.Count; i++)
        {
            grid.Add(points[i]);
        }

        RimCount = points.Count;
        foreach (IReadOnlyList<Point> line in lines)
        {
            AddLine(line);
        }

        FixedCount = points.Count;
        AddLattice();
    }

    internal double LengthMm => length;

    internal IReadOnlyList<Point> Points => points;

    internal IReadOnlyList<RimEdge> Edges => edges;

    /// <summary>The first vertices lie on the rim and its holes.</summary>
    internal int RimCount { get; }

    /// <summary>These and those on the lines must not be moved.</summary>
    internal int FixedCount { get; }

    private void AddLoop(RimLoop loop)
    {
        double[] corners = loop.Corners.Length > 0 ? loop.Corners : [0];
        int first = points.Count;
        var steps = new List<double>();
        for (int i = 0; i < corners.Length; i++)
        {
            double from = corners[i];
            double to = i + 1 < corners.Length ? corners[i + 1] : corners[0] + loop.LengthMm;
            int count = Math.Max(
                (int)Math.Round((to - from) / length),
                (int)Math.Ceiling(loop.TurningRad(from, to) / TurningPerEdgeRad)
            );
            count = Math.Max(count, corners.Length > 2 ? 1 : 3);
            for (int k = 0; k < count; k++)
            {
                steps.Add(from + ((to - from) * k / count));
            }
        }

        for (int k = 0; k < steps.Count; k++)
        {
            points.Add(loop.At(steps[k]).Position);
            double end = k + 1 < steps.Count ? steps[k + 1] : steps[0] + loop.LengthMm;
            int to = k + 1 < steps.Count ? first + k + 1 : first;
            edges.Add(new RimEdge(first + k, to, loop.IsHole).On(loop, steps[k], end));
        }
    }

    private void AddLine(IReadOnlyList<Point> line)
    {
        for (int i = 0; i + 1 < line.Count; i++)
        {
            int count = Math.Max(1, (int)Math.Round(line[i].DistanceTo(line[i + 1]) / length));
            for (int k = 0; k <= count; k++)
            {
                Point place = line[i].Towards(line[i + 1], (double)k / count);
                if (
                    rim.Contains(place)
                    && rim.DistanceTo(place) > LineFromFixed * length
                    && grid.DistanceTo(place) > LineFromFixed * length
                )
                {
                    points.Add(place);
                    grid.Add(place);
                }
            }
        }
    }

    private void AddLattice()
    {
        Box box = Box.Empty;
        for (int i = 0; i < RimCount; i++)
        {
            box = box.With(points[i]);
        }

        double pitch = length * Math.Sqrt(0.75);
        int rows = (int)Math.Ceiling(box.HeightMm / pitch / 2);
        int columns = (int)Math.Ceiling(box.WidthMm / length / 2) + 1;
        for (int row = -rows; row <= rows; row++)
        {
            double shift = row % 2 == 0 ? 0 : 0.5;
            for (int k = -columns; k <= columns; k++)
            {
                // Every other row from its end: neighbours in number stay neighbours in place.
                double column = (row % 2 == 0 ? k : -k) + shift;
                Point place = box.Centre + new Vector(column * length, row * pitch);
                if (
                    rim.Contains(place)
                    && rim.DistanceTo(place) > LatticeFromRim * length
                    && grid.DistanceTo(place) > LatticeFromLine * length
                )
                {
                    points.Add(place);
                }
            }
        }
    }
}
