using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Sparse;

/// <summary>A sparse symmetric matrix: values on a <see cref="SymmetricPattern"/>, which several matrices may share.</summary>
public sealed class SymmetricMatrix
{
    private readonly double[] values;

    /// <summary>A matrix of zeros.</summary>
    public SymmetricMatrix(SymmetricPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Pattern = pattern;
        values = new double[pattern.Count];
    }

    public SymmetricPattern Pattern { get; }

    /// <summary>Order of the matrix.</summary>
    public int Size => Pattern.Size;

    /// <summary>Values in the order of the pattern's entries.</summary>
    public ReadOnlySpan<double> Values => values;

    /// <summary>Adds to one entry (and to its mirror image).</summary>
    /// <exception cref="ArgumentException">The entry is not in the pattern.</exception>
    public void Add(int row, int column, double value)
    {
        int index = Pattern.IndexOf(row, column);
        if (index < 0)
        {
            throw new ArgumentException($"Entry ({row}, {column}) is not in the pattern.");
        }

        values[index] += value;
    }

    /// <summary>Adds a small dense symmetric matrix.</summary>
    /// <param name="unknowns">Its unknowns; rows and columns of negative ones are left out.</param>
    /// <param name="block">Row by row, as many rows and columns as there are unknowns.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void AddBlock(ReadOnlySpan<int> unknowns, ReadOnlySpan<double> block)
    {
        int n = unknowns.Length;
        ArgumentOutOfRangeException.ThrowIfNotEqual(block.Length, n * n);
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                if (unknowns[i] >= 0 && unknowns[j] >= 0 && block[(i * n) + j] != 0)
                {
                    Add(unknowns[i], unknowns[j], block[(i * n) + j]);
                }
            }
        }
    }

    /// <summary><c>this + factor · other</c>, both on the same pattern.</summary>
    public SymmetricMatrix Plus(double factor, SymmetricMatrix other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!ReferenceEquals(other.Pattern, Pattern))
        {
            throw new ArgumentException("The matrices must share their pattern.", nameof(other));
        }

        var sum = new SymmetricMatrix(Pattern);
        for (int i = 0; i < values.Length; i++)
        {
            sum.values[i] = values[i] + (factor * other.values[i]);
        }

        return sum;
    }

    /// <summary><c>y = this · x</c> for four vectors at once, their entries side by side (see <see cref="Lanes"/>).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void MultiplyLanes(ReadOnlySpan<double> x, Span<double> y)
    {
        ReadOnlySpan<int> starts = Pattern.Starts.AsSpan();
        ReadOnlySpan<int> rows = Pattern.Rows.AsSpan();
        y.Clear();
        for (int column = 0; column < Size; column++)
        {
            Vector256<double> own = Lanes.Load(x, column);
            Vector256<double> sum = Lanes.Load(y, column) + (own * values[starts[column]]);
            for (int at = starts[column] + 1; at < starts[column + 1]; at++)
            {
                int row = rows[at];
                Vector256<double> value = Vector256.Create(values[at]);
                sum = Vector256.MultiplyAddEstimate(value, Lanes.Load(x, row), sum);
                Lanes.Store(Vector256.MultiplyAddEstimate(value, own, Lanes.Load(y, row)), y, row);
            }

            Lanes.Store(sum, y, column);
        }
    }

    /// <summary><c>this · x</c>.</summary>
    public double[] Multiply(ReadOnlySpan<double> x)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(x.Length, Size);
        double[] wide = new double[Size * Lanes.Width];
        Lanes.Put(x, wide, 0);
        double[] product = new double[Size * Lanes.Width];
        MultiplyLanes(wide, product);
        return Lanes.Take(product, 0);
    }
}
