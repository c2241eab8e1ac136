using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// The unknowns of a meshed plate: which are held, how they are numbered, and in which axes they count. On the rim, slopes and movements
/// count along the true curve's tangent and to its left, so that a hinged curved rim is hinged on the curve and not on its chords
/// (which would lock it: the plate paradox of Babuška).
/// </summary>
internal sealed class PlateUnknowns
{
    // Derived: beyond this the tangents on the two sides of a vertex make a corner, not rounding.
    private const double CornerRad = 0.05;

    private readonly PlateMesh mesh;
    private readonly bool coupled;
    private readonly int[] vertexNumbers;
    private readonly int[] edgeNumbers;
    private readonly Vector[] slopeAxis;
    private readonly Vector[] shiftAxis;
    private readonly Vector[] edgeAxis;
    private readonly bool[] slaved;

    internal PlateUnknowns(PlateMesh mesh, bool coupled, Func<Point, RimEdge, EdgeSupport> support)
    {
        this.mesh = mesh;
        this.coupled = coupled;
        int points = mesh.Points.Length;
        int edges = mesh.Edges.Length;
        slopeAxis = new Vector[points];
        shiftAxis = new Vector[points];
        edgeAxis = new Vector[edges];
        slaved = new bool[edges];
        bool[] heldVertex = new bool[points * 5];
        bool[] heldEdge = new bool[edges * 3];
        Hold(heldVertex, heldEdge, support);
        vertexNumbers = new int[points * 5];
        edgeNumbers = new int[edges * 3];
        var x = new List<double>();
        var y = new List<double>();
        for (int v = 0; v < points; v++)
        {
            Number(vertexNumbers, heldVertex, 5 * v, coupled ? 5 : 3, 5, mesh.Points[v], x, y);
        }

        for (int e = 0; e < edges; e++)
        {
            (int from, int to) = mesh.Edges[e];
            Point middle = mesh.Points[from].Towards(mesh.Points[to], 0.5);
            Number(edgeNumbers, heldEdge, 3 * e, coupled ? 3 : 1, 3, middle, x, y);
        }

        X = [.. x];
        Y = [.. y];
    }

    /// <summary>How many unknowns are free.</summary>
    internal int Count => X.Length;

    internal double[] X { get; }

    internal double[] Y { get; }

    /// <summary>Unknowns of an element: 12, or 24 if stretching takes part.</summary>
    internal int Width => coupled ? PlateElement.All : PlateElement.Bending;

    internal bool IsBendingHeld { get; private set; }

    internal bool IsInPlaneHeld { get; private set; }

    /// <summary>Numbers of an element's unknowns; -1 for held ones.</summary>
    internal int[] Numbers(int triangle)
    {
        int[] numbers = new int[Width];
        for (int i = 0; i < 3; i++)
        {
            int vertex = 5 * mesh.Triangles[(3 * triangle) + i];
            int edge = 3 * mesh.Sides[(3 * triangle) + i];
            numbers[3 * i] = vertexNumbers[vertex];
            numbers[(3 * i) + 1] = vertexNumbers[vertex + 1];
            numbers[(3 * i) + 2] = vertexNumbers[vertex + 2];
            numbers[9 + i] = edgeNumbers[edge];
            if (coupled)
            {
                numbers[12 + (2 * i)] = vertexNumbers[vertex + 3];
                numbers[13 + (2 * i)] = vertexNumbers[vertex + 4];
                numbers[18 + (2 * i)] = edgeNumbers[edge + 1];
                numbers[19 + (2 * i)] = edgeNumbers[edge + 2];
            }
        }

        return numbers;
    }

    /// <summary>Number of the rise at a vertex; -1 where it is held.</summary>
    internal int RiseAt(int vertex) => vertexNumbers[5 * vertex];

    /// <summary>Three in-plane unknowns that, held, stop a plate from drifting in its plane: two at one vertex, one across at the farthest.</summary>
    internal int[] Pins()
    {
        int far = 0;
        for (int v = 1; v < mesh.Points.Length; v++)
        {
            far =
                mesh.Points[v].DistanceTo(mesh.Points[0])
                > mesh.Points[far].DistanceTo(mesh.Points[0])
                    ? v
                    : far;
        }

        Vector apart = mesh.Points[far] - mesh.Points[0];
        int across = Math.Abs(apart.X) > Math.Abs(apart.Y) ? 4 : 3;
        return [vertexNumbers[3], vertexNumbers[4], vertexNumbers[(5 * far) + across]];
    }

    /// <summary>Pairs of an element's unknowns that count in turned axes, and those axes.</summary>
    internal IEnumerable<(int First, Vector Axis)> Turned(int triangle)
    {
        for (int i = 0; i < 3; i++)
        {
            int vertex = mesh.Triangles[(3 * triangle) + i];
            if (slopeAxis[vertex].Y != 0)
            {
                yield return ((3 * i) + 1, slopeAxis[vertex]);
            }

            if (coupled && shiftAxis[vertex].Y != 0)
            {
                yield return (12 + (2 * i), shiftAxis[vertex]);
            }

            Vector edge = edgeAxis[mesh.Sides[(3 * triangle) + i]];
            if (coupled && edge.Y != 0)
            {
                yield return (18 + (2 * i), edge);
            }
        }
    }

    /// <summary>Whether the slope across an element's edge follows from the others: the plate is clamped on a curve there.</summary>
    internal bool IsSlaved(int triangle, int side) => slaved[mesh.Sides[(3 * triangle) + side]];

    private void Hold(bool[] vertices, bool[] edges, Func<Point, RimEdge, EdgeSupport> supportAt)
    {
        for (int e = 0; e < mesh.RimOfEdge.Length; e++)
        {
            if (mesh.RimOfEdge[e] < 0)
            {
                continue;
            }

            RimEdge rim = mesh.Rim[mesh.RimOfEdge[e]];
            Point from = mesh.Points[rim.From];
            Point to = mesh.Points[rim.To];
            (Point middle, Vector along) = rim.At(0.5, from, to);
            EdgeSupport support = supportAt(middle, rim);
            IsBendingHeld |= support.Bending != RimSupport.Free;
            IsInPlaneHeld |= support.InPlane != InPlaneSupport.Free;
            slaved[e] = support.Bending == RimSupport.Clamped;
            edges[3 * e] = slaved[e];
            edgeAxis[e] = along;
            edges[(3 * e) + 1] = support.InPlane != InPlaneSupport.Free;
            edges[(3 * e) + 2] = support.InPlane == InPlaneSupport.Held;
            foreach (
                (int vertex, Vector tangent) in ((int, Vector)[])
                    [(rim.From, rim.At(0, from, to).Tangent), (rim.To, rim.At(1, from, to).Tangent)]
            )
            {
                Span<bool> own = vertices.AsSpan(5 * vertex, 5);
                own[0] |= support.Bending != RimSupport.Free;
                HoldPair(
                    own[1..3],
                    ref slopeAxis[vertex],
                    tangent,
                    support.Bending != RimSupport.Free,
                    support.Bending == RimSupport.Clamped
                );
                HoldPair(
                    own[3..5],
                    ref shiftAxis[vertex],
                    tangent,
                    support.InPlane != InPlaneSupport.Free,
                    support.InPlane == InPlaneSupport.Held
                );
            }
        }
    }

    /// <summary>Holds a pair along a direction, and across it if asked. Held along a second direction it is held altogether.</summary>
    private static void HoldPair(
        Span<bool> held,
        ref Vector axis,
        Vector along,
        bool isHeldAlong,
        bool isHeldAcross
    )
    {
        if (!isHeldAlong)
        {
            return;
        }

        bool isCorner = held[0] && Math.Abs(along.Cross(axis)) > CornerRad;
        if (!held[0])
        {
            axis = along;
        }

        held[0] = true;
        held[1] |= isHeldAcross || isCorner;
    }

    private static void Number(
        int[] numbers,
        bool[] held,
        int first,
        int count,
        int stride,
        Point place,
        List<double> x,
        List<double> y
    )
    {
        for (int k = 0; k < stride; k++)
        {
            numbers[first + k] = -1;
            if (k < count && !held[first + k])
            {
                numbers[first + k] = x.Count;
                x.Add(place.X);
                y.Add(place.Y);
            }
        }
    }
}
