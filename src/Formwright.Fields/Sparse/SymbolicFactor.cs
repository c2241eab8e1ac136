namespace Formwright.Fields.Sparse;

/// <summary>Where the entries of a factor stand, found once for a pattern and an order and used for every matrix on that pattern.</summary>
internal sealed class SymbolicFactor
{
    private SymbolicFactor(SymmetricPattern pattern, EliminationOrder order)
    {
        Pattern = pattern;
        Order = order;
        Rows = new int[order.Blocks.Length][];
    }

    internal SymmetricPattern Pattern { get; }

    internal EliminationOrder Order { get; }

    /// <summary>For each block the later unknowns that it touches, ascending, new numbers.</summary>
    internal int[][] Rows { get; }

    /// <summary>Start of each new column in <see cref="Entries"/>.</summary>
    internal int[] ColumnStarts { get; private set; } = [];

    /// <summary>Entries of the permuted lower triangle: new row and index of the value.</summary>
    internal (int Row, int Source)[] Entries { get; private set; } = [];

    internal static SymbolicFactor Of(SymmetricPattern pattern, EliminationOrder order)
    {
        var symbolic = new SymbolicFactor(pattern, order);
        symbolic.Permute();
        symbolic.FindRows();
        return symbolic;
    }

    private void Permute()
    {
        ReadOnlySpan<int> starts = Pattern.Starts.AsSpan();
        ReadOnlySpan<int> rows = Pattern.Rows.AsSpan();
        int[] place = new int[Pattern.Size];
        for (int i = 0; i < place.Length; i++)
        {
            place[Order.Unknowns[i]] = i;
        }

        ColumnStarts = new int[Pattern.Size + 1];
        for (int column = 0; column < place.Length; column++)
        {
            for (int at = starts[column]; at < starts[column + 1]; at++)
            {
                ColumnStarts[Math.Min(place[column], place[rows[at]]) + 1]++;
            }
        }

        for (int i = 0; i < place.Length; i++)
        {
            ColumnStarts[i + 1] += ColumnStarts[i];
        }

        int[] next = [.. ColumnStarts];
        Entries = new (int, int)[Pattern.Count];
        for (int column = 0; column < place.Length; column++)
        {
            for (int at = starts[column]; at < starts[column + 1]; at++)
            {
                int a = place[column];
                int b = place[rows[at]];
                Entries[next[Math.Min(a, b)]++] = (Math.Max(a, b), at);
            }
        }
    }

    private void FindRows()
    {
        var children = new List<int>[Rows.Length];
        int[] seen = new int[Pattern.Size];
        Array.Fill(seen, -1);
        var found = new List<int>();
        for (int block = 0; block < Rows.Length; block++)
        {
            EliminationBlock own = Order.Blocks[block];
            int end = own.Start + own.Count;
            found.Clear();
            for (int at = ColumnStarts[own.Start]; at < ColumnStarts[end]; at++)
            {
                Note(Entries[at].Row);
            }

            foreach (int child in children[block] ?? [])
            {
                foreach (int row in Rows[child])
                {
                    Note(row);
                }
            }

            found.Sort();
            Rows[block] = [.. found];
            if (own.Parent >= 0)
            {
                (children[own.Parent] ??= []).Add(block);
            }

            void Note(int row)
            {
                if (row >= end && seen[row] != block)
                {
                    seen[row] = block;
                    found.Add(row);
                }
            }
        }
    }
}
