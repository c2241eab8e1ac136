namespace Formwright.Trace.Fairing;

/// <summary>
/// A symmetric positive definite banded matrix and its Cholesky factor. Row i keeps its entries left of and on the diagonal:
/// <c>[i * (band + 1) + (i - j)]</c>.
/// </summary>
internal sealed class BandedCholesky(int size, int band)
{
    private readonly double[] a = new double[size * (band + 1)];

    internal void Clear() => Array.Clear(a);

    /// <summary>Adds to the entry of row i and column j; only the half with j ≤ i is kept, so each pair is added once.</summary>
    internal void Add(int i, int j, double value)
    {
        (i, j) = i >= j ? (i, j) : (j, i);
        a[(i * (band + 1)) + (i - j)] += value;
    }

    /// <summary>Factors the matrix in place and solves for one right side, in place; false when it is not positive definite.</summary>
    internal bool FactorAndSolve(Span<double> b)
    {
        int width = band + 1;
        for (int i = 0; i < size; i++)
        {
            int first = Math.Max(0, i - band);
            for (int j = first; j <= i; j++)
            {
                double sum = a[(i * width) + (i - j)];
                for (int k = Math.Max(first, j - band); k < j; k++)
                {
                    sum -= a[(i * width) + (i - k)] * a[(j * width) + (j - k)];
                }

                if (j < i)
                {
                    a[(i * width) + (i - j)] = sum / a[j * width];
                }
                else if (sum > 0)
                {
                    a[i * width] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        for (int i = 0; i < size; i++)
        {
            double sum = b[i];
            for (int k = Math.Max(0, i - band); k < i; k++)
            {
                sum -= a[(i * width) + (i - k)] * b[k];
            }

            b[i] = sum / a[i * width];
        }

        for (int i = size - 1; i >= 0; i--)
        {
            double sum = b[i];
            for (int k = i + 1; k <= Math.Min(size - 1, i + band); k++)
            {
                sum -= a[(k * width) + (k - i)] * b[k];
            }

            b[i] = sum / a[i * width];
        }

        return true;
    }
}
