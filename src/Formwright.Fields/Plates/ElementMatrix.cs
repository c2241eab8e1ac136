using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Plates;

/// <summary>A small dense symmetric matrix of one element, and the changes of unknowns that bring it into the whole.</summary>
internal sealed class ElementMatrix(int size)
{
    internal int Size => size;

    internal double[] Values { get; } = new double[size * size];

    /// <summary>Adds <c>weight · leftᵀ right</c>, from unknown <paramref name="first"/> on, and counts on the sum being symmetric in the end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void AddProduct(
        double weight,
        ReadOnlySpan<double> left,
        ReadOnlySpan<double> right,
        int first = 0
    )
    {
        for (int i = 0; i < left.Length; i++)
        {
            double factor = weight * left[i];
            if (factor == 0)
            {
                continue;
            }

            Vector256<double> scale = Vector256.Create(factor);
            ref double row = ref Values[((first + i) * size) + first];
            for (int j = 0; j < right.Length; j += 4)
            {
                Vector256<double> sum = Vector256.MultiplyAddEstimate(
                    scale,
                    Vector256.LoadUnsafe(in right[j]),
                    Vector256.LoadUnsafe(ref row, (nuint)j)
                );
                sum.StoreUnsafe(ref row, (nuint)j);
            }
        }
    }

    /// <summary>Adds <c>weight · rowsᵀ Q rows</c> for three rows of equal length and a 3 × 3 matrix, from an unknown on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void AddEnergy(
        double weight,
        ReadOnlySpan<double> rows,
        ReadOnlySpan<double> q,
        int first = 0
    )
    {
        int width = rows.Length / 3;
        Span<double> stress = stackalloc double[PlateElement.All];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < width; j++)
            {
                stress[j] =
                    (q[3 * i] * rows[j])
                    + (q[(3 * i) + 1] * rows[width + j])
                    + (q[(3 * i) + 2] * rows[(2 * width) + j]);
            }

            AddProduct(weight, rows.Slice(i * width, width), stress[..width], first);
        }
    }

    /// <summary>The pair of unknowns (x, y) at <paramref name="first"/> becomes (along, left of) a direction.</summary>
    internal void Turn(int first, double cos, double sin)
    {
        for (int i = 0; i < size; i++)
        {
            ref double x = ref Values[(i * size) + first];
            ref double y = ref Values[(i * size) + first + 1];
            (x, y) = ((cos * x) + (sin * y), (cos * y) - (sin * x));
        }

        Span<double> rowX = Values.AsSpan(first * size, size);
        Span<double> rowY = Values.AsSpan((first + 1) * size, size);
        for (int j = 0; j < size; j++)
        {
            double x = rowX[j];
            double y = rowY[j];
            (rowX[j], rowY[j]) = ((cos * x) + (sin * y), (cos * y) - (sin * x));
        }
    }

    /// <summary>An unknown becomes a sum of the others with factors (0 for itself).</summary>
    internal void Replace(int unknown, ReadOnlySpan<double> factors)
    {
        for (int i = 0; i < size; i++)
        {
            double own = Values[(i * size) + unknown];
            for (int j = 0; j < factors.Length; j++)
            {
                Values[(i * size) + j] += factors[j] * own;
            }
        }

        for (int i = 0; i < factors.Length; i++)
        {
            for (int j = 0; j < size; j++)
            {
                Values[(i * size) + j] += factors[i] * Values[(unknown * size) + j];
            }
        }
    }
}
