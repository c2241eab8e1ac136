using Formwright.Curves;
using Formwright.Fields.Sparse;

namespace Formwright.Fields.Plates;

/// <content>Between the elements and the whole: axes, held and slaved unknowns, loads, places.</content>
public sealed partial class PlateModel
{
    internal (int Element, int Part)? Locate(Point place) => locator.Find(place);

    /// <summary>Points that stand for a spot, with weights that sum to its area (1 for a single place).</summary>
    internal IEnumerable<(int Element, ElementPoint Point)> PointsOf(PlateSpot spot)
    {
        if (spot.Place is Point place)
        {
            return Locate(place) is (int element, int part)
                ? [(element, new ElementPoint(part, place, 1))]
                : throw new ArgumentException("The place lies off the plate.", nameof(spot));
        }

        if (spot.Corners.IsEmpty)
        {
            return Enumerable
                .Range(0, triangles.Count)
                .SelectMany(e =>
                    triangles.PointsOf(e, PlateTriangles.MassPoints).Select(point => (e, point))
                );
        }

        List<(int, ElementPoint)> points = [.. triangles.PointsIn(spot.Corners.AsSpan())];
        return points.Count > 0
            ? points
            : throw new ArgumentException("The spot lies off the plate.", nameof(spot));
    }

    internal PlateMotion MotionAt(int element, ElementPoint point, ReadOnlySpan<double> unknowns)
    {
        Span<double> own = stackalloc double[PlateElement.All];
        Gather(element, unknowns, own);
        var shapes = new ElementShapes();
        triangles[element].Values(point.Part, point.Place, shapes);
        triangles[element].Slopes(point.Part, point.Place, shapes);
        double rise = 0;
        double slopeX = 0;
        double slopeY = 0;
        for (int k = 0; k < PlateElement.Bending; k++)
        {
            rise += own[k] * shapes.W[k];
            slopeX += own[k] * shapes.Wx[k];
            slopeY += own[k] * shapes.Wy[k];
        }

        double u = 0;
        double v = 0;
        for (int node = 0; node < 6; node++)
        {
            u += own[PlateElement.Bending + (2 * node)] * shapes.Shift[node];
            v += own[PlateElement.Bending + (2 * node) + 1] * shapes.Shift[node];
        }

        return new(rise, new(slopeX, slopeY), new(u, v));
    }

    internal HeightSample SampleAt(
        int element,
        int part,
        Point place,
        ReadOnlySpan<double> unknowns
    )
    {
        Span<double> own = stackalloc double[PlateElement.All];
        Gather(element, unknowns, own);
        var shapes = new ElementShapes();
        triangles[element].Values(part, place, shapes);
        triangles[element].Slopes(part, place, shapes);
        triangles[element].Strains(part, place, shapes);
        double[] sums = new double[6];
        for (int k = 0; k < PlateElement.Bending; k++)
        {
            sums[0] += own[k] * shapes.W[k];
            sums[1] += own[k] * shapes.Wx[k];
            sums[2] += own[k] * shapes.Wy[k];
            sums[3] += own[k] * shapes.Wxx[k];
            sums[4] += own[k] * shapes.Wxy[k];
            sums[5] += own[k] * shapes.Wyy[k];
        }

        return new(sums[0], new(sums[1], sums[2]), sums[3], sums[4], sums[5]);
    }

    /// <summary>An element's unknowns in the plate's axes.</summary>
    private void Gather(int e, ReadOnlySpan<double> unknowns, Span<double> own)
    {
        own.Clear();
        int[] numbers = Unknowns.Numbers(e);
        for (int k = 0; k < numbers.Length; k++)
        {
            own[k] = numbers[k] < 0 ? 0 : unknowns[numbers[k]];
        }

        for (int side = 0; side < 3; side++)
        {
            if (slaves[(3 * e) + side] is double[] factors)
            {
                for (int k = 0; k < factors.Length; k++)
                {
                    own[9 + side] += factors[k] * own[k];
                }
            }
        }

        foreach ((int first, Vector axis) in Unknowns.Turned(e))
        {
            double along = own[first];
            double across = own[first + 1];
            own[first] = (axis.X * along) - (axis.Y * across);
            own[first + 1] = (axis.Y * along) + (axis.X * across);
        }
    }

    /// <summary>
    /// Where the plate is clamped on a curve, the slope across it is 0 at the middle of the arc, not of the chord: that gives the edge's
    /// own unknown as a sum of the element's others.
    /// </summary>
    private void FindSlaves(int e)
    {
        for (int side = 0; side < 3; side++)
        {
            if (!Unknowns.IsSlaved(e, side))
            {
                continue;
            }

            RimEdge rim = triangles.RimOf(e, side)!;
            (Point middle, Vector along) = triangles.OnCurve(rim, 0.5);
            Vector normal = along.Left * (1 / along.Length);
            var shapes = new ElementShapes();
            triangles[e].Slopes(side, middle, shapes);
            double[] factors = new double[PlateElement.Bending];
            for (int k = 0; k < factors.Length; k++)
            {
                factors[k] = (normal.X * shapes.Wx[k]) + (normal.Y * shapes.Wy[k]);
            }

            foreach ((int first, Vector axis) in Unknowns.Turned(e))
            {
                if (first < 9)
                {
                    (factors[first], factors[first + 1]) = (
                        (axis.X * factors[first]) + (axis.Y * factors[first + 1]),
                        (axis.X * factors[first + 1]) - (axis.Y * factors[first])
                    );
                }
            }

            double own = -factors[9 + side];
            factors[9 + side] = 0;
            slaves[(3 * e) + side] = Array.ConvertAll(factors, factor => factor / own);
        }
    }

    private void Into(SymmetricMatrix whole, int e, ElementMatrix element, int[] numbers)
    {
        foreach ((int first, Vector axis) in Unknowns.Turned(e))
        {
            element.Turn(first, axis.X, axis.Y);
        }

        for (int side = 0; side < 3; side++)
        {
            if (slaves[(3 * e) + side] is double[] factors)
            {
                element.Replace(9 + side, factors);
            }
        }

        whole.AddBlock(numbers, element.Values);
    }

    private double[] LoadVector(IReadOnlyList<PlateLoad> loads)
    {
        double[] whole = new double[UnknownCount];
        Span<double> own = stackalloc double[PlateElement.All];
        var shapes = new ElementShapes();
        foreach (PlateLoad load in loads)
        {
            List<(int Element, ElementPoint Point)> points = [.. PointsOf(load.Spot)];
            double area = points.Sum(point => point.Point.Weight);
            foreach ((int element, ElementPoint point) in points)
            {
                double share = point.Weight / area;
                triangles[element].Values(point.Part, point.Place, shapes);
                triangles[element].Slopes(point.Part, point.Place, shapes);
                own.Clear();
                for (int k = 0; k < PlateElement.Bending; k++)
                {
                    own[k] =
                        share
                        * (
                            (load.ForceN * shapes.W[k])
                            + (load.CoupleNmm.X * shapes.Wx[k])
                            + (load.CoupleNmm.Y * shapes.Wy[k])
                        );
                }

                for (int node = 0; node < 6; node++)
                {
                    int u = PlateElement.Bending + (2 * node);
                    own[u] = share * load.PullN.X * shapes.Shift[node];
                    own[u + 1] = share * load.PullN.Y * shapes.Shift[node];
                }

                Spread(element, own, whole);
            }
        }

        return whole;
    }

    private void Spread(int e, Span<double> own, double[] whole)
    {
        foreach ((int first, Vector axis) in Unknowns.Turned(e))
        {
            (own[first], own[first + 1]) = (
                (axis.X * own[first]) + (axis.Y * own[first + 1]),
                (axis.X * own[first + 1]) - (axis.Y * own[first])
            );
        }

        for (int side = 0; side < 3; side++)
        {
            if (slaves[(3 * e) + side] is double[] factors)
            {
                for (int k = 0; k < factors.Length; k++)
                {
                    own[k] += factors[k] * own[9 + side];
                }
            }
        }

        int[] numbers = Unknowns.Numbers(e);
        for (int k = 0; k < numbers.Length; k++)
        {
            if (numbers[k] >= 0)
            {
                whole[numbers[k]] += own[k];
            }
        }
    }

    private EdgeSupport SupportAt(Point middle, RimEdge edge) =>
        plate.SupportAt is not null ? plate.SupportAt(middle)
        : edge.IsHole ? EdgeSupport.Free
        : plate.Support;

    /// <summary>The meshed plate as a region; its curved edges as polylines.</summary>
    private Region RegionOfMesh()
    {
        const int pieces = 8;
        var loops = new List<IReadOnlyList<Point>>();
        var next = Mesh.Rim.ToDictionary(edge => edge.From);
        double sagitta = 0;
        while (next.Count > 0)
        {
            var loop = new List<Point>();
            int vertex = next.Keys.Min();
            while (next.Remove(vertex, out RimEdge? edge))
            {
                Point from = Mesh.Points[edge.From];
                Point to = Mesh.Points[edge.To];
                int count = edge.IsCurved ? pieces : 1;
                double bow = edge.At(0.5, from, to).Position.DistanceTo(from.Towards(to, 0.5));
                sagitta = Math.Max(sagitta, bow / (count * count));
                for (int k = 0; k < count; k++)
                {
                    loop.Add(edge.At((double)k / count, from, to).Position);
                }

                vertex = edge.To;
            }

            loops.Add(loop);
        }

        return Region.OfLoops(loops, sagitta);
    }

    /// <summary>A third of what the first mode of a free plate about this size could be, as λ = ω².</summary>
    private double FreeScale()
    {
        double thickness = 0;
        for (int e = 0; e < triangles.Count; e++)
        {
            thickness += plate.ThicknessMm(triangles[e].Centre) / triangles.Count;
        }

        double modulus = Math.Min(plate.Wood.AlongMpa, plate.Wood.AcrossMpa);
        double stiffness = modulus * thickness * thickness * thickness / 12;
        return 25 * stiffness / (MassKg / 1000 * AreaMm2);
    }

    private SparseFactor StaticFactor()
    {
        if (!Unknowns.IsBendingHeld)
        {
            throw new InvalidOperationException("Nothing holds the plate.");
        }

        if (!plate.IsCoupled || Unknowns.IsInPlaneHeld)
        {
            return SparseFactor.Of(Stiffness, Order);
        }

        // Free in its plane: three springs stop it from drifting; loads in balance leave them without force.
        var pinned = Stiffness.Plus(0, Mass);
        foreach (int unknown in Unknowns.Pins())
        {
            pinned.Add(unknown, unknown, plate.Wood.AlongMpa);
        }

        return SparseFactor.Of(pinned, Order);
    }

    private PlateMode ModeOf(double value, double[] vector, double residual)
    {
        double[] shape = vector;
        var raw = new PlateShape(this, vector);
        double largest = 0;
        foreach (double rise in raw.Rises)
        {
            largest = Math.Abs(rise) > Math.Abs(largest) ? rise : largest;
        }

        // A mode within the plane has no rise to scale by.
        double scale = Math.Abs(largest) > 0 ? 1 / largest : 1;
        shape = Array.ConvertAll(shape, entry => entry * scale);
        double swept = 0;
        double[] uniform = uniformLoad ??= LoadVector([new(PlateSpot.Whole, AreaMm2)]);
        for (int i = 0; i < shape.Length; i++)
        {
            swept += uniform[i] * shape[i];
        }

        double frequency = Math.Sqrt(Math.Max(0, value)) / (2 * Math.PI);
        return new(frequency, new(this, shape), 1000 * scale * scale, swept, residual);
    }

    private double[]? uniformLoad;
}
