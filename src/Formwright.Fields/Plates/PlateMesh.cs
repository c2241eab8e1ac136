using System.Collections.Immutable;
using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A plate divided into triangles, with its rim.</summary>
public sealed class PlateMesh
{
    private PlateMesh(ImmutableArray<Point> points, int[] triangles, IEnumerable<RimEdge> rim)
    {
        Points = points;
        Triangles = ImmutableArray.Create(triangles);
        Rim = [.. rim];
        var edges = new List<(int From, int To)>();
        var numbers = new Dictionary<(int, int), int>(triangles.Length);
        int[] sides = new int[triangles.Length];
        for (int at = 0; at < triangles.Length; at++)
        {
            int t = at - (at % 3);
            int a = triangles[t + ((at + 1) % 3)];
            int b = triangles[t + ((at + 2) % 3)];
            (int, int) key = (Math.Min(a, b), Math.Max(a, b));
            if (!numbers.TryGetValue(key, out int number))
            {
                numbers[key] = number = edges.Count;
                edges.Add(key);
            }

            sides[at] = number;
        }

        Edges = [.. edges];
        Sides = ImmutableArray.Create(sides);
        int[] rimOf = new int[edges.Count];
        Array.Fill(rimOf, -1);
        for (int i = 0; i < Rim.Length; i++)
        {
            (int, int) key = (Math.Min(Rim[i].From, Rim[i].To), Math.Max(Rim[i].From, Rim[i].To));
            rimOf[
                numbers.TryGetValue(key, out int number)
                    ? number
                    : throw new ArgumentException($"Rim edge {i} belongs to no triangle.")
            ] = i;
        }

        RimOfEdge = ImmutableArray.Create(rimOf);
    }

    public ImmutableArray<Point> Points { get; }

    /// <summary>Vertices of the triangles, three to each, counter-clockwise.</summary>
    public ImmutableArray<int> Triangles { get; }

    public int TriangleCount => Triangles.Length / 3;

    public ImmutableArray<RimEdge> Rim { get; }

    /// <summary>All edges, lower vertex first.</summary>
    public ImmutableArray<(int From, int To)> Edges { get; }

    /// <summary>Edge opposite to each entry of <see cref="Triangles"/>.</summary>
    internal ImmutableArray<int> Sides { get; }

    /// <summary>Number in <see cref="Rim"/> of each edge, or -1 inside.</summary>
    internal ImmutableArray<int> RimOfEdge { get; }

    /// <summary>Smallest angle of any triangle, rad.</summary>
    public double SmallestAngleRad
    {
        get
        {
            double smallest = Math.PI;
            for (int at = 0; at < Triangles.Length; at++)
            {
                int t = at - (at % 3);
                Vector a = Points[Triangles[t + ((at + 1) % 3)]] - Points[Triangles[at]];
                Vector b = Points[Triangles[t + ((at + 2) % 3)]] - Points[Triangles[at]];
                smallest = Math.Min(smallest, Math.Atan2(a.Cross(b), a.Dot(b)));
            }

            return smallest;
        }
    }

    /// <summary>A mesh from given triangles; rim edges are straight.</summary>
    /// <param name="points">Vertices, mm.</param>
    /// <param name="triangles">Three vertices to each, counter-clockwise.</param>
    /// <exception cref="ArgumentException">A triangle is not counter-clockwise, or an edge has more than two triangles.</exception>
    public static PlateMesh FromTriangles(IReadOnlyList<Point> points, IReadOnlyList<int> triangles)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(triangles);
        ArgumentOutOfRangeException.ThrowIfNotEqual(triangles.Count % 3, 0);
        var open = new HashSet<(int From, int To)>();
        for (int t = 0; t < triangles.Count; t += 3)
        {
            Point a = points[triangles[t]];
            if (!((points[triangles[t + 1]] - a).Cross(points[triangles[t + 2]] - a) > 0))
            {
                throw new ArgumentException($"Triangle {t / 3} is not counter-clockwise.");
            }

            for (int k = 0; k < 3; k++)
            {
                if (!open.Add((triangles[t + k], triangles[t + ((k + 1) % 3)])))
                {
                    throw new ArgumentException($"Triangle {t / 3} overlaps another.");
                }
            }
        }

        RimEdge[] rim =
        [
            .. open.Where(edge => !open.Contains((edge.To, edge.From)))
                .Order()
                .Select(edge => new RimEdge(edge.From, edge.To, IsHole: false)),
        ];
        return new([.. points], [.. triangles], rim);
    }

    /// <summary>A mesh of a plate with about as many unknowns as asked.</summary>
    /// <inheritdoc cref="PlateModel.Of"/>
    public static PlateMesh Of(Plate plate, int unknowns = 5000)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentOutOfRangeException.ThrowIfLessThan(unknowns, 200);
        return PlateMeshing.Mesh(plate, unknowns);
    }

    /// <summary>A mesh of the plate inside a rim and outside its holes.</summary>
    /// <param name="rim">A closed curve.</param>
    /// <param name="holes">Closed curves inside it that do not touch.</param>
    /// <param name="lines">Lines that edges should follow where that leaves good triangles, such as braces.</param>
    /// <param name="edgeLengthMm">Length of most edges.</param>
    /// <param name="curvedRim">Triangles on the rim have one curved side; false: they end on its chord.</param>
    /// <exception cref="ArgumentException">A curve is open or encloses nothing, or loops touch or cross.</exception>
    public static PlateMesh Of(
        ICurve rim,
        IReadOnlyList<ICurve> holes,
        IReadOnlyList<IReadOnlyList<Point>> lines,
        double edgeLengthMm,
        bool curvedRim = true
    )
    {
        ArgumentNullException.ThrowIfNull(rim);
        ArgumentNullException.ThrowIfNull(holes);
        ArgumentNullException.ThrowIfNull(lines);
        Guard.Positive(edgeLengthMm);
        return Of(
            new MeshPoints(LoopsOf(rim, holes), new MeshLines(lines), edgeLengthMm),
            curvedRim
        );
    }

    internal static RimLoop[] LoopsOf(ICurve rim, IReadOnlyList<ICurve> holes) =>
        [new RimLoop(rim, isHole: false), .. holes.Select(hole => new RimLoop(hole, isHole: true))];

    internal static PlateMesh Of(MeshPoints start, bool curvedRim = true) =>
        TryOf(start, out Point fault, curvedRim)
        ?? throw new ArgumentException(
            FormattableString.Invariant(
                $"The rim crosses or nearly touches itself or a hole near ({fault.X:0.0}, {fault.Y:0.0}); edges of {start.LengthMm:0.0} mm are too long there."
            )
        );

    internal static PlateMesh? TryOf(MeshPoints start, out Point fault, bool curvedRim = true) =>
        Mesher.Run(start, out fault) is (Point[] points, int[] triangles)
            ? new(
                [.. points],
                triangles,
                curvedRim
                    ? start.Edges
                    : start.Edges.Select(edge => new RimEdge(edge.From, edge.To, edge.IsHole))
            )
            : null;
}
