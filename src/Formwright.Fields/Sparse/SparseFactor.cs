using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Sparse;

/// <summary>
/// A sparse symmetric matrix as L·D·Lᵀ: multifrontal elimination along a tree of blocks (Duff &amp; Reid, ACM TOMS 9, 1983), dense
/// and vectorised within a block, without exchanging rows.
/// </summary>
/// <remarks>
/// Safe for positive definite matrices. For indefinite ones (a shift between eigenvalues) it is accurate unless a leading part happens
/// to be nearly singular; <see cref="SmallestPivotRatio"/> then is tiny. By Sylvester's law <see cref="NegativePivots"/> is the
/// number of negative eigenvalues. The same input gives the same bits.
/// </remarks>
public sealed class SparseFactor
{
    private readonly SymbolicFactor symbolic;
    private readonly double[][] lower;
    private readonly double[] pivots;

    private SparseFactor(SymbolicFactor symbolic)
    {
        this.symbolic = symbolic;
        lower = new double[symbolic.Rows.Length][];
        pivots = new double[symbolic.Pattern.Size];
    }

    /// <summary>Order of the matrix.</summary>
    public int Size => pivots.Length;

    /// <summary>Entries kept in L, the zeros within blocks included.</summary>
    public long Count => lower.Sum(block => (long)block.Length);

    /// <summary>How many negative eigenvalues the matrix has.</summary>
    public int NegativePivots => pivots.Count(pivot => pivot < 0);

    /// <summary>Least pivot over the diagonal entry it started from; near 1e-16 the matrix is singular for all we can tell.</summary>
    public double SmallestPivotRatio { get; private set; } = double.PositiveInfinity;

    /// <summary>Factors a matrix.</summary>
    /// <param name="matrix">The matrix.</param>
    /// <param name="order">From <see cref="NestedDissection"/> for the matrix's pattern.</param>
    /// <exception cref="ArithmeticException">A pivot is 0 or not a number: the matrix is singular as it stands.</exception>
    public static SparseFactor Of(SymmetricMatrix matrix, EliminationOrder order)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        ArgumentNullException.ThrowIfNull(order);
        return Of(matrix, SymbolicFactor.Of(matrix.Pattern, order));
    }

    /// <summary>A factor of another matrix on the same pattern, in the same order.</summary>
    public SparseFactor Again(SymmetricMatrix matrix)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        return ReferenceEquals(matrix.Pattern, symbolic.Pattern)
            ? Of(matrix, symbolic)
            : throw new ArgumentException("The pattern differs.", nameof(matrix));
    }

    private static SparseFactor Of(SymmetricMatrix matrix, SymbolicFactor symbolic)
    {
        var factor = new SparseFactor(symbolic);
        factor.Eliminate(matrix.Values);
        return factor;
    }

    /// <summary>The solution x of matrix · x = <paramref name="load"/>.</summary>
    public double[] Solve(ReadOnlySpan<double> load)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(load.Length, Size);
        double[] lanes = new double[Size * Lanes.Width];
        Lanes.Put(load, lanes, 0);
        SolveLanes(lanes);
        return Lanes.Take(lanes, 0);
    }

    /// <summary>Solutions for several loads; four cost little more than one.</summary>
    public double[][] Solve(IReadOnlyList<double[]> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        double[][] solutions = new double[loads.Count][];
        double[] lanes = new double[Size * Lanes.Width];
        for (int first = 0; first < loads.Count; first += Lanes.Width)
        {
            int count = Math.Min(Lanes.Width, loads.Count - first);
            Array.Clear(lanes);
            for (int k = 0; k < count; k++)
            {
                ArgumentOutOfRangeException.ThrowIfNotEqual(loads[first + k].Length, Size);
                Lanes.Put(loads[first + k], lanes, k);
            }

            SolveLanes(lanes);
            for (int k = 0; k < count; k++)
            {
                solutions[first + k] = Lanes.Take(lanes, k);
            }
        }

        return solutions;
    }

    /// <summary>Solves for four loads in place.</summary>
    internal void SolveLanes(Span<double> lanes)
    {
        double[] x = new double[lanes.Length];
        for (int i = 0; i < Size; i++)
        {
            Lanes.Store(Lanes.Load(lanes, symbolic.Order.Unknowns[i]), x, i);
        }

        for (int block = 0; block < lower.Length; block++)
        {
            Forward(block, x);
        }

        for (int i = 0; i < Size; i++)
        {
            Lanes.Store(Lanes.Load(x, i) * (1 / pivots[i]), x, i);
        }

        for (int block = lower.Length - 1; block >= 0; block--)
        {
            Backward(block, x);
        }

        for (int i = 0; i < Size; i++)
        {
            Lanes.Store(Lanes.Load(x, i), lanes, symbolic.Order.Unknowns[i]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Forward(int block, Span<double> x)
    {
        (int start, int count, _) = symbolic.Order.Blocks[block];
        int[] rows = symbolic.Rows[block];
        ReadOnlySpan<double> values = lower[block];
        for (int i = 0; i < count + rows.Length; i++)
        {
            ReadOnlySpan<double> row = values.Slice(i * count, Math.Min(i, count));
            Vector256<double> sum = default;
            Vector256<double> second = default;
            int k = 0;
            for (; k + 1 < row.Length; k += 2)
            {
                sum = Multiply(row[k], Lanes.Load(x, start + k), sum);
                second = Multiply(row[k + 1], Lanes.Load(x, start + k + 1), second);
            }

            if (k < row.Length)
            {
                sum = Multiply(row[k], Lanes.Load(x, start + k), sum);
            }

            int target = i < count ? start + i : rows[i - count];
            Lanes.Store(Lanes.Load(x, target) - (sum + second), x, target);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Backward(int block, Span<double> x)
    {
        (int start, int count, _) = symbolic.Order.Blocks[block];
        int[] rows = symbolic.Rows[block];
        ReadOnlySpan<double> values = lower[block];
        int last = count + rows.Length - 1;
        for (; last - 1 >= count; last -= 2)
        {
            Vector256<double> a = -Lanes.Load(x, rows[last - count]);
            Vector256<double> b = -Lanes.Load(x, rows[last - 1 - count]);
            ReadOnlySpan<double> rowA = values.Slice(last * count, count);
            ReadOnlySpan<double> rowB = values.Slice((last - 1) * count, count);
            for (int k = 0; k < count; k++)
            {
                Vector256<double> sum = Multiply(rowA[k], a, Lanes.Load(x, start + k));
                Lanes.Store(Multiply(rowB[k], b, sum), x, start + k);
            }
        }

        for (int i = last; i >= 0; i--)
        {
            Vector256<double> own = -Lanes.Load(x, i < count ? start + i : rows[i - count]);
            ReadOnlySpan<double> row = values.Slice(i * count, Math.Min(i, count));
            for (int k = 0; k < row.Length; k++)
            {
                Lanes.Store(Multiply(row[k], own, Lanes.Load(x, start + k)), x, start + k);
            }
        }
    }

    private static Vector256<double> Multiply(
        double factor,
        Vector256<double> lanes,
        Vector256<double> sum
    ) => Vector256.MultiplyAddEstimate(Vector256.Create(factor), lanes, sum);

    private void Eliminate(ReadOnlySpan<double> values)
    {
        var front = new Front();
        int[] local = new int[Size];
        var waiting = new List<(int Block, double[] Left)>[lower.Length];
        for (int block = 0; block < lower.Length; block++)
        {
            (int start, int count, int parent) = symbolic.Order.Blocks[block];
            int[] rows = symbolic.Rows[block];
            front.Clear(count + rows.Length);
            for (int i = 0; i < count; i++)
            {
                local[start + i] = i;
            }

            for (int i = 0; i < rows.Length; i++)
            {
                local[rows[i]] = count + i;
            }

            Assemble(front, block, values, local);
            foreach ((int child, double[] rest) in waiting[block] ?? [])
            {
                Extend(front, symbolic.Rows[child], rest, local);
            }

            waiting[block] = null!;
            double[] diagonal = new double[count];
            for (int i = 0; i < count; i++)
            {
                diagonal[i] = front.Row(i)[i];
            }

            front.Eliminate(count, pivots.AsSpan(start, count));
            Judge(diagonal, pivots.AsSpan(start, count));
            lower[block] = new double[(count + rows.Length) * count];
            for (int i = 0; i < count + rows.Length; i++)
            {
                front.Row(i)[..count].CopyTo(lower[block].AsSpan(i * count));
            }

            if (rows.Length > 0)
            {
                (waiting[parent] ??= []).Add((block, Rest(front, count)));
            }
        }
    }

    private void Judge(ReadOnlySpan<double> diagonal, ReadOnlySpan<double> own)
    {
        for (int i = 0; i < own.Length; i++)
        {
            if (!double.IsFinite(own[i]) || own[i] == 0)
            {
                throw new ArithmeticException("The matrix is singular.");
            }

            SmallestPivotRatio = Math.Min(
                SmallestPivotRatio,
                Math.Abs(own[i]) / Math.Abs(diagonal[i])
            );
        }
    }

    private void Assemble(Front front, int block, ReadOnlySpan<double> values, int[] local)
    {
        EliminationBlock own = symbolic.Order.Blocks[block];
        for (int i = 0; i < own.Count; i++)
        {
            for (
                int at = symbolic.ColumnStarts[own.Start + i];
                at < symbolic.ColumnStarts[own.Start + i + 1];
                at++
            )
            {
                (int row, int source) = symbolic.Entries[at];
                front.Row(local[row])[i] += values[source];
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Extend(Front front, int[] rows, double[] rest, int[] local)
    {
        int at = 0;
        for (int i = 0; i < rows.Length; i++)
        {
            Span<double> target = front.Row(local[rows[i]]);
            for (int j = 0; j <= i; j++)
            {
                target[local[rows[j]]] += rest[at++];
            }
        }
    }

    private static double[] Rest(Front front, int count)
    {
        int size = front.Rows - count;
        double[] rest = new double[size * (size + 1) / 2];
        int at = 0;
        for (int i = 0; i < size; i++)
        {
            front.Row(count + i).Slice(count, i + 1).CopyTo(rest.AsSpan(at));
            at += i + 1;
        }

        return rest;
    }
}
