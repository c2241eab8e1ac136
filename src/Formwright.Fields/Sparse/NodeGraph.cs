namespace Formwright.Fields.Sparse;

/// <summary>Unknowns that share a place drawn together to nodes, and which nodes touch.</summary>
internal sealed class NodeGraph
{
    private NodeGraph(int[] firstUnknown, int[] weights, double[] x, double[] y, int[][] touching)
    {
        FirstUnknown = firstUnknown;
        Weights = weights;
        X = x;
        Y = y;
        Touching = touching;
    }

    internal int Count => Weights.Length;

    internal int[] FirstUnknown { get; }

    /// <summary>Unknowns of each node.</summary>
    internal int[] Weights { get; }

    internal double[] X { get; }

    internal double[] Y { get; }

    internal int[][] Touching { get; }

    internal int WeightOf(int[] part)
    {
        int weight = 0;
        foreach (int node in part)
        {
            weight += Weights[node];
        }

        return weight;
    }

    internal static NodeGraph Of(
        SymmetricPattern pattern,
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y
    )
    {
        int[] nodeOf = new int[pattern.Size];
        var first = new List<int>();
        for (int i = 0; i < pattern.Size; i++)
        {
            if (i == 0 || x[i] != x[i - 1] || y[i] != y[i - 1])
            {
                first.Add(i);
            }

            nodeOf[i] = first.Count - 1;
        }

        int count = first.Count;
        int[] weights = new int[count];
        double[] nodeX = new double[count];
        double[] nodeY = new double[count];
        for (int node = 0; node < count; node++)
        {
            weights[node] = (node + 1 < count ? first[node + 1] : pattern.Size) - first[node];
            nodeX[node] = x[first[node]];
            nodeY[node] = y[first[node]];
        }

        return new([.. first], weights, nodeX, nodeY, Neighbours(pattern, nodeOf, first));
    }

    private static int[][] Neighbours(SymmetricPattern pattern, int[] nodeOf, List<int> first)
    {
        ReadOnlySpan<int> starts = pattern.Starts.AsSpan();
        ReadOnlySpan<int> rows = pattern.Rows.AsSpan();
        var touching = new List<int>[first.Count];
        for (int node = 0; node < touching.Length; node++)
        {
            touching[node] = [];
        }

        int[] seen = new int[first.Count];
        Array.Fill(seen, -1);
        for (int node = 0; node < first.Count; node++)
        {
            int end = node + 1 < first.Count ? first[node + 1] : pattern.Size;
            seen[node] = node;
            for (int at = starts[first[node]]; at < starts[end]; at++)
            {
                int other = nodeOf[rows[at]];
                if (seen[other] != node)
                {
                    seen[other] = node;
                    touching[node].Add(other);
                    touching[other].Add(node);
                }
            }
        }

        return [.. touching.Select(list => list.ToArray())];
    }
}
