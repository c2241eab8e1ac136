namespace Formwright.Trace.Fitting;

/// <summary>Small dense systems.</summary>
internal static class DenseSolver
{
    /// <summary>A square matrix of zeros, by rows.</summary>
    internal static double[][] Matrix(int size)
    {
        double[][] rows = new double[size][];
        for (int i = 0; i < size; i++)
        {
            rows[i] = new double[size];
        }

        return rows;
    }

    /// <summary>Solves A x = b in place by elimination with row pivots; false when A is singular to rounding.</summary>
    internal static bool Solve(double[][] a, double[] b)
    {
        int n = b.Length;
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
            {
                pivot = Math.Abs(a[i][k]) > Math.Abs(a[pivot][k]) ? i : pivot;
            }

            if (!(Math.Abs(a[pivot][k]) > 1e-300))
            {
                return false;
            }

            if (pivot != k)
            {
                (a[k], a[pivot]) = (a[pivot], a[k]);
                (b[k], b[pivot]) = (b[pivot], b[k]);
            }

            for (int i = k + 1; i < n; i++)
            {
                double factor = a[i][k] / a[k][k];
                if (factor == 0)
                {
                    continue;
                }

                for (int j = k + 1; j < n; j++)
                {
                    a[i][j] -= factor * a[k][j];
                }

                b[i] -= factor * b[k];
            }
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < n; j++)
            {
                b[i] -= a[i][j] * b[j];
            }

            b[i] /= a[i][i];
        }

        return true;
    }
}
