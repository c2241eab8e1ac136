namespace Formwright.Curves.Variation;

/// <summary>Three linear equations.</summary>
internal static class ThreeByThree
{
    /// <summary>Gaussian elimination with row exchange; the matrix is used up. A singular one gives numbers that are not finite.</summary>
    internal static double[] Solve(double[,] m, ReadOnlySpan<double> right)
    {
        double[] x = [right[0], right[1], right[2]];
        for (int k = 0; k < 3; k++)
        {
            int best = k;
            for (int i = k + 1; i < 3; i++)
            {
                if (Math.Abs(m[i, k]) > Math.Abs(m[best, k]))
                {
                    best = i;
                }
            }

            if (best != k)
            {
                for (int j = 0; j < 3; j++)
                {
                    (m[k, j], m[best, j]) = (m[best, j], m[k, j]);
                }

                (x[k], x[best]) = (x[best], x[k]);
            }

            for (int i = k + 1; i < 3; i++)
            {
                double factor = m[i, k] / m[k, k];
                for (int j = k; j < 3; j++)
                {
                    m[i, j] -= factor * m[k, j];
                }

                x[i] -= factor * x[k];
            }
        }

        for (int k = 2; k >= 0; k--)
        {
            for (int j = k + 1; j < 3; j++)
            {
                x[k] -= m[k, j] * x[j];
            }

            x[k] /= m[k, k];
        }

        return x;
    }
}
