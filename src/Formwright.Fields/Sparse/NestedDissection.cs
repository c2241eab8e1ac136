using System.Collections.Immutable;

namespace Formwright.Fields.Sparse;

/// <summary>
/// Orders the unknowns of a mesh so that little fill arises: the mesh is halved by a line across its longer side, the nodes that keep
/// the halves apart come last, and each half is treated the same (nested dissection; A. George, SIAM J. Numer. Anal. 10, 1973).
/// The nodes that keep them apart are the fewest that touch all connections across the line (König's theorem, by augmenting paths).
/// </summary>
public static class NestedDissection
{
    // Tuned: smaller parts gain nothing, as a block that size is dense work anyway.
    private const int LargestLeaf = 40;

    /// <summary>The order for a pattern whose unknowns have places.</summary>
    /// <param name="pattern">Which unknowns touch.</param>
    /// <param name="x">Place of each unknown; neighbours in number with the same place are kept together.</param>
    /// <param name="y">Place of each unknown.</param>
    /// <exception cref="ArgumentException">There are not as many places as unknowns, or one is not finite.</exception>
    public static EliminationOrder Order(
        SymmetricPattern pattern,
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y
    )
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentOutOfRangeException.ThrowIfNotEqual(x.Length, pattern.Size);
        ArgumentOutOfRangeException.ThrowIfNotEqual(y.Length, pattern.Size);
        foreach (double place in (double[])[.. x, .. y])
        {
            if (!double.IsFinite(place))
            {
                throw new ArgumentException("A place is not finite.", nameof(x));
            }
        }

        var nodes = NodeGraph.Of(pattern, x, y);
        var halving = new Halving(nodes);
        int[] order = new int[pattern.Size];
        var blocks = new List<EliminationBlock>();
        int placed = 0;
        int Dissect(int[] part)
        {
            int[] last = part;
            int left = -1;
            int right = -1;
            if (nodes.WeightOf(part) > LargestLeaf && part.Length > 2)
            {
                (int[] low, int[] high, int[] apart) = halving.Halve(part);
                if (low.Length < part.Length)
                {
                    last = apart;
                    left = low.Length > 0 ? Dissect(low) : -1;
                    right = high.Length > 0 ? Dissect(high) : -1;
                }
            }

            int start = placed;
            foreach (int node in last)
            {
                for (int k = 0; k < nodes.Weights[node]; k++)
                {
                    order[placed++] = nodes.FirstUnknown[node] + k;
                }
            }

            int block = blocks.Count;
            blocks.Add(new(start, placed - start, -1));
            foreach (int child in (ReadOnlySpan<int>)[left, right])
            {
                if (child >= 0)
                {
                    blocks[child] = blocks[child] with { Parent = block };
                }
            }

            return block;
        }

        if (pattern.Size > 0)
        {
            Dissect([.. Enumerable.Range(0, nodes.Count)]);
        }

        return new(ImmutableArray.Create(order), [.. blocks]);
    }
}
