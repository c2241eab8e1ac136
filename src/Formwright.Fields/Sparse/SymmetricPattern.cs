using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Formwright.Fields.Sparse;

/// <summary>
/// Which entries of a symmetric matrix may differ from zero: its lower triangle by columns, rows ascending, the diagonal always there.
/// </summary>
public sealed class SymmetricPattern
{
    private readonly int[] starts;
    private readonly int[] rows;

    private SymmetricPattern(int[] starts, int[] rows)
    {
        this.starts = starts;
        this.rows = rows;
    }

    /// <summary>Order of the matrix.</summary>
    public int Size => starts.Length - 1;

    /// <summary>Entries of the lower triangle with the diagonal.</summary>
    public int Count => rows.Length;

    /// <summary>Where each column starts in <see cref="Rows"/>; one more than there are columns.</summary>
    public ImmutableArray<int> Starts => ImmutableCollectionsMarshal.AsImmutableArray(starts);

    /// <summary>Row of each entry, column after column.</summary>
    public ImmutableArray<int> Rows => ImmutableCollectionsMarshal.AsImmutableArray(rows);

    /// <summary>
    /// The pattern of a matrix that is summed from small dense ones, as finite elements are: all unknowns of a group touch each other.
    /// </summary>
    /// <param name="size">Order of the matrix.</param>
    /// <param name="groups">The unknowns of each small matrix; a negative one is held and is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">An unknown is not below <paramref name="size"/>.</exception>
    public static SymmetricPattern FromGroups(int size, IReadOnlyList<int[]> groups)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentNullException.ThrowIfNull(groups);
        (int[] groupStarts, int[] groupsOf) = Membership(size, groups);
        int[] starts = new int[size + 1];
        int[] seen = new int[size];
        Array.Fill(seen, -1);
        var rows = new List<int>(size * 16);
        for (int column = 0; column < size; column++)
        {
            seen[column] = column;
            rows.Add(column);
            int first = rows.Count;
            for (int at = groupStarts[column]; at < groupStarts[column + 1]; at++)
            {
                foreach (int row in groups[groupsOf[at]])
                {
                    if (row > column && seen[row] != column)
                    {
                        seen[row] = column;
                        rows.Add(row);
                    }
                }
            }

            rows.Sort(first, rows.Count - first, null);
            starts[column + 1] = rows.Count;
        }

        return new(starts, [.. rows]);
    }

    /// <summary>Place of entry (<paramref name="row"/>, <paramref name="column"/>) of either triangle among the entries; negative if it is none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int IndexOf(int row, int column)
    {
        int low = Math.Min(row, column);
        return Array.BinarySearch(
            rows,
            starts[low],
            starts[low + 1] - starts[low],
            Math.Max(row, column)
        );
    }

    private static (int[] Starts, int[] Groups) Membership(int size, IReadOnlyList<int[]> groups)
    {
        int[] starts = new int[size + 1];
        foreach (int unknown in groups.SelectMany(group => group))
        {
            if (unknown >= size)
            {
                throw new ArgumentOutOfRangeException(
                    nameof(groups),
                    unknown,
                    $"The matrix has {size} unknowns."
                );
            }

            if (unknown >= 0)
            {
                starts[unknown + 1]++;
            }
        }

        for (int i = 0; i < size; i++)
        {
            starts[i + 1] += starts[i];
        }

        int[] next = [.. starts];
        int[] members = new int[starts[size]];
        for (int group = 0; group < groups.Count; group++)
        {
            foreach (int unknown in groups[group])
            {
                if (unknown >= 0)
                {
                    members[next[unknown]++] = group;
                }
            }
        }

        return (starts, members);
    }
}
