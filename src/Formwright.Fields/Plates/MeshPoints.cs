using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// Vertices for a mesh of a given edge length: equal steps along the rim and its holes, along the lines that the mesh should follow, and a
/// lattice of equilateral triangles between them, symmetric about the middle of the plate.
/// </summary>
internal sealed class MeshPoints
{
    // Tuned, in edge lengths, for angles and for how much of the lines comes to lie on edges.
    private const double TurningPerEdgeRad = 0.6;
    private const double LatticeFromRim = 0.62;
    private const double LatticeFromLine = 0.6;
    private const double LineFromRim = 0.5;
    private const double LineFromFixed = 0.45;
    private const double CrossingFromFixed = 0.3;

    private readonly List<Point> points = [];
    private readonly List<RimEdge> edges = [];
    private readonly MeshLines lines;
    private readonly PointGrid near;
    private readonly SegmentGrid rim;

    internal MeshPoints(IReadOnlyList<RimLoop> loops, MeshLines lines, double edgeLengthMm)
    {
        this.lines = lines;
        LengthMm = edgeLengthMm;
        near = new(edgeLengthMm);
        rim = new(edgeLengthMm);
        foreach (RimLoop loop in loops)
        {
            AddLoop(loop);
        }

        foreach (RimEdge edge in edges)
        {
            rim.Add(points[edge.From], points[edge.To]);
        }

        foreach (Point place in points)
        {
            near.Add(place);
        }

        RimCount = points.Count;
        AddLines();
        FixedCount = points.Count;
        AddLattice();
    }

    internal double LengthMm { get; }

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
        var free = new List<bool>();
        for (int i = 0; i < corners.Length; i++)
        {
            double from = corners[i];
            double to = i + 1 < corners.Length ? corners[i + 1] : corners[0] + loop.LengthMm;
            int count = Math.Max(
                (int)Math.Round((to - from) / LengthMm),
                (int)Math.Ceiling(loop.TurningRad(from, to) / TurningPerEdgeRad)
            );
            count = Math.Max(count, corners.Length > 2 ? 1 : 3);
            for (int k = 0; k < count; k++)
            {
                steps.Add(from + ((to - from) * k / count));
                free.Add(k > 0 || loop.Corners.Length == 0);
            }
        }

        steps.Add(steps[0] + loop.LengthMm);
        SlideToLines(loop, steps, free);
        for (int k = 0; k + 1 < steps.Count; k++)
        {
            points.Add(loop.At(steps[k]).Position);
            int to = k + 2 < steps.Count ? first + k + 1 : first;
            edges.Add(new RimEdge(first + k, to, loop.IsHole).On(loop, steps[k], steps[k + 1]));
        }
    }

    /// <summary>Moves the nearer end of an edge to where a line crosses it, once for each vertex and never for a corner.</summary>
    private void SlideToLines(RimLoop loop, List<double> steps, List<bool> free)
    {
        int count = free.Count;
        double[] old = [.. steps];
        for (int k = 0; k < count; k++)
        {
            Point from = loop.At(old[k]).Position;
            Point to = loop.At(old[k + 1]).Position;
            foreach (double share in lines.CrossingsOf(from, to))
            {
                int vertex = share < 0.5 ? k : (k + 1) % count;
                if (free[vertex])
                {
                    free[vertex] = false;
                    double move = (share < 0.5 ? share : share - 1) * (old[k + 1] - old[k]);
                    steps[vertex] += move;
                    if (vertex == 0)
                    {
                        steps[count] += move;
                    }
                }
            }
        }
    }

    private void AddLines()
    {
        for (int piece = 0; piece < lines.Pieces.Count; piece++)
        {
            (Point from, Point to) = lines.Pieces[piece];
            foreach (double cut in lines.Cuts(piece))
            {
                AddOnLine(from.Towards(to, cut), CrossingFromFixed);
            }
        }

        for (int piece = 0; piece < lines.Pieces.Count; piece++)
        {
            (Point from, Point to) = lines.Pieces[piece];
            double before = 0;
            foreach (double cut in lines.Cuts(piece).Skip(1))
            {
                double length = (cut - before) * from.DistanceTo(to);
                int count = Math.Max(1, (int)Math.Round(length / LengthMm));
                for (int k = 1; k < count; k++)
                {
                    double share = before + ((cut - before) * k / count);
                    AddOnLine(from.Towards(to, share), LineFromFixed);
                }

                before = cut;
            }
        }
    }

    private void AddOnLine(Point place, double apart)
    {
        if (
            near.DistanceTo(place) > apart * LengthMm
            && rim.DistanceTo(place) > LineFromRim * LengthMm
            && rim.Contains(place)
        )
        {
            points.Add(place);
            near.Add(place);
        }
    }

    private void AddLattice()
    {
        var follow = new SegmentGrid(LengthMm);
        foreach ((Point from, Point to) in lines.Pieces)
        {
            follow.Add(from, to);
        }

        Box box = Box.Empty;
        for (int i = 0; i < RimCount; i++)
        {
            box = box.With(points[i]);
        }

        double pitch = LengthMm * Math.Sqrt(0.75);
        int rows = (int)Math.Ceiling(box.HeightMm / pitch / 2);
        int columns = (int)Math.Ceiling(box.WidthMm / LengthMm / 2) + 1;
        for (int row = -rows; row <= rows; row++)
        {
            double shift = row % 2 == 0 ? 0 : 0.5;
            for (int k = -columns; k <= columns; k++)
            {
                // Every other row from its end: neighbours in number stay neighbours in place.
                double column = (row % 2 == 0 ? k : -k) + shift;
                Point place = box.Centre + new Vector(column * LengthMm, row * pitch);
                if (
                    rim.Contains(place)
                    && rim.DistanceTo(place) > LatticeFromRim * LengthMm
                    && follow.DistanceTo(place) > LatticeFromLine * LengthMm
                    && near.DistanceTo(place) > LatticeFromLine * LengthMm
                )
                {
                    points.Add(place);
                }
            }
        }
    }
}
