using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>The elements of a mesh, and where to sample them: all over, inside a polygon, along a line.</summary>
internal sealed class PlateTriangles
{
    /// <summary>Points each way in a part: exact for bending energy of a thickness whose cube is of degree 2.</summary>
    internal const int StiffnessPoints = 3;

    /// <summary>Exact for the squares of cubics.</summary>
    internal const int MassPoints = 4;

    private const int CurvedPoints = 5;

    private readonly PlateMesh mesh;
    private readonly PlateElement[] elements;
    private readonly Box[] boxes;

    internal PlateTriangles(PlateMesh mesh)
    {
        this.mesh = mesh;
        elements = new PlateElement[mesh.TriangleCount];
        boxes = new Box[elements.Length];
        for (int e = 0; e < elements.Length; e++)
        {
            Point[] corners = new Point[3];
            Vector[] normals = new Vector[3];
            for (int i = 0; i < 3; i++)
            {
                corners[i] = mesh.Points[mesh.Triangles[(3 * e) + i]];
                (int from, int to) = mesh.Edges[mesh.Sides[(3 * e) + i]];
                Vector edge = mesh.Points[to] - mesh.Points[from];
                normals[i] = edge.Left * (1 / edge.Length);
            }

            elements[e] = new(corners, normals);
            boxes[e] = Box.Empty.With(corners[0]).With(corners[1]).With(corners[2]);
        }
    }

    internal int Count => elements.Length;

    internal PlateElement this[int e] => elements[e];

    /// <summary>Points all over an element, up to the true curve of the rim.</summary>
    internal IEnumerable<ElementPoint> PointsOf(int e, int count)
    {
        for (int part = 0; part < 3; part++)
        {
            Point[] corners = elements[e].Part(part);
            RimEdge? rim = RimOf(e, part);
            GaussRule rule = GaussRule.Of(rim is { IsCurved: true } ? CurvedPoints : count);
            for (int i = 0; i < rule.Points.Length; i++)
            {
                Point edge = corners[0].Towards(corners[1], rule.Points[i]);
                Vector run = corners[1] - corners[0];
                if (rim is { IsCurved: true })
                {
                    (edge, run) = OnCurve(rim, rule.Points[i]);
                }

                double height = run.Cross(corners[2] - edge);
                for (int j = 0; j < rule.Points.Length; j++)
                {
                    double r = rule.Points[j];
                    yield return new(
                        part,
                        corners[2].Towards(edge, r),
                        rule.Weights[i] * rule.Weights[j] * r * height
                    );
                }
            }
        }
    }

    /// <summary>Points over the part of the plate inside a convex polygon.</summary>
    internal IEnumerable<(int Element, ElementPoint Point)> PointsIn(ReadOnlySpan<Point> polygon)
    {
        var found = new List<(int, ElementPoint)>();
        Box box = Box.Empty;
        foreach (Point corner in polygon)
        {
            box = box.With(corner);
        }

        GaussRule rule = GaussRule.Of(MassPoints);
        for (int e = 0; e < elements.Length; e++)
        {
            if (!Overlap(box, boxes[e]))
            {
                continue;
            }

            for (int part = 0; part < 3; part++)
            {
                Point[] piece = ConvexPolygon.Clip(elements[e].Part(part), polygon);
                for (int k = 1; k + 1 < piece.Length; k++)
                {
                    Fan(e, part, piece[0], piece[k], piece[k + 1], rule, found);
                }
            }
        }

        return found;
    }

    /// <summary>Points along a straight line over the plate, and which share of the line lies before each.</summary>
    internal IEnumerable<(int Element, ElementPoint Point, double Share)> PointsAlong(
        Point from,
        Point to
    )
    {
        List<LinePiece> pieces = PiecesAlong(from, to);
        double[] cuts =
        [
            .. pieces.SelectMany(piece => (double[])[piece.From, piece.To]).Distinct().Order(),
        ];
        GaussRule rule = GaussRule.Of(MassPoints);
        double length = from.DistanceTo(to);
        for (int i = 0; i + 1 < cuts.Length; i++)
        {
            double step = cuts[i + 1] - cuts[i];
            double middle = cuts[i] + (step / 2);
            // On an edge shared by two elements the first one counts: there both say the same.
            int owner = pieces.FindIndex(piece => piece.From < middle && middle < piece.To);
            if (owner < 0 || step < 1e-12)
            {
                continue;
            }

            for (int k = 0; k < rule.Points.Length; k++)
            {
                double share = cuts[i] + (step * rule.Points[k]);
                var point = new ElementPoint(
                    pieces[owner].Part,
                    from.Towards(to, share),
                    rule.Weights[k] * step * length
                );
                yield return (pieces[owner].Element, point, share);
            }
        }
    }

    private readonly record struct LinePiece(int Element, int Part, double From, double To);

    private List<LinePiece> PiecesAlong(Point from, Point to)
    {
        var pieces = new List<LinePiece>();
        Box box = Box.Empty.With(from).With(to);
        for (int e = 0; e < elements.Length; e++)
        {
            if (!Overlap(box, boxes[e]))
            {
                continue;
            }

            for (int part = 0; part < 3; part++)
            {
                Point[] corners = elements[e].Part(part);
                double start = 0;
                double end = 1;
                for (int k = 0; k < 3; k++)
                {
                    Vector side = corners[(k + 1) % 3] - corners[k];
                    double slack = -1e-9 * side.Length * side.Length;
                    double a = side.Cross(from - corners[k]) - slack;
                    double b = side.Cross(to - corners[k]) - slack;
                    if (a < 0 && b < 0)
                    {
                        end = -1;
                    }
                    else if (a < 0)
                    {
                        start = Math.Max(start, a / (a - b));
                    }
                    else if (b < 0)
                    {
                        end = Math.Min(end, a / (a - b));
                    }
                }

                if (end > start)
                {
                    pieces.Add(new(e, part, start, end));
                }
            }
        }

        return pieces;
    }

    internal RimEdge? RimOf(int e, int side)
    {
        int rim = mesh.RimOfEdge[mesh.Sides[(3 * e) + side]];
        return rim < 0 ? null : mesh.Rim[rim];
    }

    /// <summary>Place on a rim edge and the curve's derivative by its share.</summary>
    internal (Point Place, Vector Run) OnCurve(RimEdge rim, double share)
    {
        const double step = 1e-4;
        Point from = mesh.Points[rim.From];
        Point to = mesh.Points[rim.To];
        Vector run =
            rim.At(share + step, from, to).Position - rim.At(share - step, from, to).Position;
        return (rim.At(share, from, to).Position, run * (1 / (2 * step)));
    }

    private static void Fan(
        int e,
        int part,
        Point a,
        Point b,
        Point c,
        GaussRule rule,
        List<(int, ElementPoint)> found
    )
    {
        double twice = (b - a).Cross(c - a);
        for (int i = 0; i < rule.Points.Length; i++)
        {
            Point edge = b.Towards(c, rule.Points[i]);
            for (int j = 0; j < rule.Points.Length; j++)
            {
                double r = rule.Points[j];
                double weight = rule.Weights[i] * rule.Weights[j] * r * twice;
                found.Add((e, new(part, a.Towards(edge, r), weight)));
            }
        }
    }

    private static bool Overlap(Box a, Box b) =>
        a.Min.X <= b.Max.X && b.Min.X <= a.Max.X && a.Min.Y <= b.Max.Y && b.Min.Y <= a.Max.Y;
}
