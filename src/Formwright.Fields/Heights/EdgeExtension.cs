namespace Formwright.Fields;

/// <summary>
/// Continues node values beyond the edge, where the field is 0, by three layers: first along the grid lines by the
/// polynomial through the zero on the edge and the nodes inside, then into what the lines do not reach by a parabola
/// through known neighbours. Quadratics are continued exactly.
/// </summary>
internal static class EdgeExtension
{
    internal const int Layers = 3;

    /// <summary>Degree of the polynomials along the lines (tuned: 2 leaves more, 4 oscillates).</summary>
    private const int Degree = 3;

    /// <summary>With a shorter arm the node next to the edge says too little about the slope and is passed over (tuned).</summary>
    private const double ShortArm = 0.1;

    internal static NodeArray Extended(MembraneGrid grid, double[] u)
    {
        var field = new NodeArray(
            grid.StepMm,
            grid.FirstX - Layers,
            grid.FirstY - Layers,
            grid.Columns + (2 * Layers),
            grid.Rows + (2 * Layers)
        );
        foreach (MembraneGrid.Span span in grid.Spans)
        {
            int length = span.To - span.From;
            int at =
                ((span.Row + Layers) * field.Columns)
                + span.From
                - (span.Row * grid.Columns)
                + Layers;
            u.AsSpan(span.From, length).CopyTo(field.Values.AsSpan(at));
            field.Known.AsSpan(at, length).Fill(1);
        }
        var reached = new Dictionary<int, (double Sum, double Weight)>();
        for (int row = Layers; row < field.Rows - Layers; row++)
        {
            var line = new Line(row * field.Columns, 1, field.Columns, field.FirstX);
            Continue(field, line, grid.RowCrossings.On(field.FirstY + row), reached);
        }
        for (int column = Layers; column < field.Columns - Layers; column++)
        {
            var line = new Line(column, field.Columns, field.Rows, field.FirstY);
            Continue(field, line, grid.ColumnCrossings.On(field.FirstX + column), reached);
        }
        foreach ((int node, (double sum, double weight)) in reached)
        {
            field.Values[node] = sum / weight;
            field.Known[node] = 2;
        }
        FillCorners(field);
        return field;
    }

    /// <summary>A line of the grid: node k is element Start + k·Stride.</summary>
    private readonly record struct Line(int Start, int Stride, int Count, int First)
    {
        internal int At(int node) => Start + (node * Stride);

        internal bool Holds(int node) => node >= 0 && node < Count;
    }

    private static void Continue(
        NodeArray field,
        Line line,
        ReadOnlySpan<double> crossings,
        Dictionary<int, (double Sum, double Weight)> reached
    )
    {
        for (int i = 0; i < crossings.Length; i++)
        {
            double at = crossings[i] - line.First;
            int before = (int)Math.Ceiling(at - MembraneGrid.OnEdge) - 1;
            int after = (int)Math.Floor(at + MembraneGrid.OnEdge) + 1;
            double other = i > 0 ? crossings[i - 1] - line.First : double.NegativeInfinity;
            Outward(field, line, before, 1, at - before, other - before, reached);
            other =
                i + 1 < crossings.Length ? crossings[i + 1] - line.First : double.PositiveInfinity;
            Outward(field, line, after, -1, after - at, after - other, reached);
        }
    }

    /// <summary>
    /// Continues from the last node inside. With t counted from that node outward, u has a zero on the edge at
    /// <paramref name="arm"/>, and where the run inside is short another on the far edge at <paramref name="farArm"/>.
    /// </summary>
    private static void Outward(
        NodeArray field,
        Line line,
        int node,
        int outward,
        double arm,
        double farArm,
        Dictionary<int, (double Sum, double Weight)> reached
    )
    {
        Span<double> t = stackalloc double[Degree + 1];
        Span<double> q = stackalloc double[Degree + 1];
        int known = 0;
        for (
            int k = node;
            known < q.Length && line.Holds(k) && field.Known[line.At(k)] == 1;
            k -= outward
        )
        {
            t[known] = -known;
            q[known++] = field.Values[line.At(k)];
        }
        if (known == 0)
        {
            return;
        }
        bool isShort = known < q.Length && double.IsFinite(farArm);
        int skip = arm < ShortArm && known > 1 ? 1 : 0;
        int used = Math.Min(known - skip, isShort ? Degree - 1 : Degree);
        t = t.Slice(skip, used);
        q = q.Slice(skip, used);
        for (int i = 0; i < used; i++)
        {
            q[i] /= (t[i] - arm) * (isShort ? t[i] - farArm : 1);
        }
        for (int step = 1; step <= Layers && line.Holds(node + (step * outward)); step++)
        {
            int at = line.At(node + (step * outward));
            if (field.Known[at] == 1)
            {
                return;
            }
            double beyond = step - arm;
            double value = beyond * (isShort ? step - farArm : 1) * Lagrange(t, q, step);
            // Of two lines that reach a node, the one that is sooner there counts more.
            double weight = 1 / ((beyond * beyond) + 0.01);
            (double sum, double total) = reached.GetValueOrDefault(at);
            reached[at] = (sum + (weight * value), total + weight);
        }
    }

    private static double Lagrange(ReadOnlySpan<double> t, ReadOnlySpan<double> q, double at)
    {
        double sum = 0;
        for (int i = 0; i < t.Length; i++)
        {
            double term = q[i];
            for (int j = 0; j < t.Length; j++)
            {
                term *= j == i ? 1 : (at - t[j]) / (t[i] - t[j]);
            }
            sum += term;
        }
        return sum;
    }

    /// <summary>Fills the nodes within reach of the inside that no grid line leads to.</summary>
    private static void FillCorners(NodeArray field)
    {
        int[] missing = Missing(field);
        Span<int> strides = [1, -1, field.Columns, -field.Columns];
        var fresh = new List<(int Node, double Value)>();
        for (byte pass = 3; missing.Length > 0 && pass < 3 + (2 * Layers); pass++)
        {
            fresh.Clear();
            foreach (int node in missing)
            {
                double sum = 0;
                int count = 0;
                foreach (int stride in strides)
                {
                    if (
                        field.Known[node + stride] != 0
                        && field.Known[node + (2 * stride)] != 0
                        && field.Known[node + (3 * stride)] != 0
                    )
                    {
                        sum +=
                            (3 * (field.Values[node + stride] - field.Values[node + (2 * stride)]))
                            + field.Values[node + (3 * stride)];
                        count++;
                    }
                }
                if (count > 0)
                {
                    fresh.Add((node, sum / count));
                }
            }
            foreach ((int node, double value) in fresh)
            {
                field.Values[node] = value;
                field.Known[node] = pass;
            }
            missing = [.. missing.Where(node => field.Known[node] == 0)];
        }
    }

    /// <summary>Unknown nodes within the layers of a node inside, in order.</summary>
    private static int[] Missing(NodeArray field)
    {
        var near = new SortedSet<int>();
        int columns = field.Columns;
        for (int i = Layers * columns; i < field.Values.Length - (Layers * columns); i++)
        {
            bool edge =
                field.Known[i] == 1
                && (
                    field.Known[i - 1] != 1
                    || field.Known[i + 1] != 1
                    || field.Known[i - columns] != 1
                    || field.Known[i + columns] != 1
                );
            if (!edge)
            {
                continue;
            }
            for (int j = -Layers; j <= Layers; j++)
            {
                for (int k = i + (j * columns) - Layers; k <= i + (j * columns) + Layers; k++)
                {
                    if (field.Known[k] == 0)
                    {
                        near.Add(k);
                    }
                }
            }
        }
        return [.. near];
    }
}
