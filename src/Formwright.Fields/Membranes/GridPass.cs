using System.Numerics;
using System.Runtime.InteropServices;

namespace Formwright.Fields;

/// <summary>
/// The passes over a grid that take the time, written on vectors. Every element is computed by the same operations in
/// the same order whatever the width of a vector, so the bytes of the answer do not depend on the machine.
/// </summary>
internal static class GridPass
{
    private static readonly Vector<long> Even = new([
        .. Enumerable.Range(0, Vector<long>.Count).Select(i => i % 2 == 0 ? -1L : 0L),
    ]);

    /// <summary>One Gauss-Seidel pass over the nodes of a colour.</summary>
    internal static void Relax(MembraneGrid grid, int colour)
    {
        ref double u = ref MemoryMarshal.GetArrayDataReference(grid.U);
        ref double f = ref MemoryMarshal.GetArrayDataReference(grid.F);
        nuint columns = (nuint)grid.Columns;
        nuint width = (nuint)Vector<double>.Count;
        double[] values = grid.U;
        double[] right = grid.F;
        foreach (MembraneGrid.Span span in grid.Spans)
        {
            int from = span.From;
            bool evenLanes = grid.Colour(from - (span.Row * grid.Columns), span.Row) == colour;
            Vector<long> mask = evenLanes ? Even : ~Even;
            nuint i = (nuint)from;
            nuint end = (nuint)span.To;
            if (i + width <= end)
            {
                Vector<double> west = Vector.LoadUnsafe(ref u, i - 1);
                for (; i + width <= end; i += width)
                {
                    Vector<double> old = Vector.LoadUnsafe(ref u, i);
                    Vector<double> east = Vector.LoadUnsafe(ref u, i + 1);
                    // Read before the store below: the lane it would change belongs to the other colour's neighbours.
                    Vector<double> nextWest = Vector.LoadUnsafe(ref u, i + width - 1);
                    Vector<double> fresh =
                        (
                            (
                                (west + east)
                                + (
                                    Vector.LoadUnsafe(ref u, i - columns)
                                    + Vector.LoadUnsafe(ref u, i + columns)
                                )
                            ) + Vector.LoadUnsafe(ref f, i)
                        ) * 0.25;
                    Vector.ConditionalSelect(mask, fresh, old).StoreUnsafe(ref u, i);
                    west = nextWest;
                }
            }
            // The rest of the run, every second node.
            for (int k = (int)i + (evenLanes ? 0 : 1); k < span.To; k += 2)
            {
                values[k] =
                    (
                        (
                            (values[k - 1] + values[k + 1])
                            + (values[k - grid.Columns] + values[k + grid.Columns])
                        ) + right[k]
                    ) * 0.25;
            }
        }
        grid.Cut[colour].Relax(values, right);
    }

    /// <summary>
    /// Writes the residual of one run of inner nodes, f + Σ neighbours - 4u, into a row as long as the grid is wide.
    /// </summary>
    internal static void Residual(MembraneGrid grid, in MembraneGrid.Span span, Span<double> row)
    {
        int columns = grid.Columns;
        int length = span.To - span.From;
        ReadOnlySpan<double> u = grid.U;
        ReadOnlySpan<double> middle = u.Slice(span.From, length);
        ReadOnlySpan<double> west = u.Slice(span.From - 1, length);
        ReadOnlySpan<double> east = u.Slice(span.From + 1, length);
        ReadOnlySpan<double> south = u.Slice(span.From - columns, length);
        ReadOnlySpan<double> north = u.Slice(span.From + columns, length);
        ReadOnlySpan<double> f = grid.F.AsSpan(span.From, length);
        Span<double> into = row.Slice(span.From - (span.Row * columns), length);
        int i = 0;
        for (; i + Vector<double>.Count <= length; i += Vector<double>.Count)
        {
            (
                (
                    (
                        (new Vector<double>(west[i..]) + new Vector<double>(east[i..]))
                        + (new Vector<double>(south[i..]) + new Vector<double>(north[i..]))
                    ) + new Vector<double>(f[i..])
                ) - (new Vector<double>(middle[i..]) * 4)
            ).CopyTo(into[i..]);
        }
        for (; i < length; i++)
        {
            into[i] = (((west[i] + east[i]) + (south[i] + north[i])) + f[i]) - (middle[i] * 4);
        }
        grid.Cut[0].Residual(grid.U, grid.F, into, span.From, span.To);
        grid.Cut[1].Residual(grid.U, grid.F, into, span.From, span.To);
    }

    /// <summary>into = middle + (before + after)/2, element by element.</summary>
    internal static void Blend(
        ReadOnlySpan<double> before,
        ReadOnlySpan<double> middle,
        ReadOnlySpan<double> after,
        Span<double> into
    )
    {
        int i = 0;
        for (; i + Vector<double>.Count <= into.Length; i += Vector<double>.Count)
        {
            (
                new Vector<double>(middle[i..])
                + ((new Vector<double>(before[i..]) + new Vector<double>(after[i..])) * 0.5)
            ).CopyTo(into[i..]);
        }
        for (; i < into.Length; i++)
        {
            into[i] = middle[i] + ((before[i] + after[i]) * 0.5);
        }
    }

    /// <summary>Largest of the values without sign; not a number if any is not.</summary>
    internal static double Largest(ReadOnlySpan<double> values)
    {
        Vector<double> largest = Vector<double>.Zero;
        int i = 0;
        for (; i + Vector<double>.Count <= values.Length; i += Vector<double>.Count)
        {
            largest = Vector.Max(largest, Vector.Abs(new Vector<double>(values[i..])));
        }
        double result = 0;
        for (int lane = 0; lane < Vector<double>.Count; lane++)
        {
            result = Math.Max(result, largest[lane]);
        }
        for (; i < values.Length; i++)
        {
            result = Math.Max(result, Math.Abs(values[i]));
        }
        return result;
    }
}
