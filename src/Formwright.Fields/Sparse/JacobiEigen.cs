using System.Runtime.CompilerServices;

namespace Formwright.Fields.Sparse;

/// <summary>
/// All eigenvalues and vectors of a small dense symmetric matrix by cyclic Jacobi rotations (Golub &amp; Van Loan, <i>Matrix
/// Computations</i>, section 8.5): short, and accurate to rounding for small eigenvalues of positive matrices too.
/// </summary>
internal static class JacobiEigen
{
    private const int MostSweeps = 60;

    /// <summary>Eigenvalues, largest first, and the vector of each as a row.</summary>
    /// <param name="matrix">n × n, row by row; left unchanged.</param>
    /// <param name="n">Order.</param>
    internal static (double[] Values, double[][] Vectors) Solve(double[] matrix, int n)
    {
        double[][] a = new double[n][];
        double[][] v = new double[n][];
        for (int i = 0; i < n; i++)
        {
            a[i] = matrix.AsSpan(i * n, n).ToArray();
            v[i] = new double[n];
            v[i][i] = 1;
        }

        for (int sweep = 0; sweep < MostSweeps && Sweep(a, v, n); sweep++) { }

        int[] order = [.. Enumerable.Range(0, n).OrderByDescending(i => a[i][i])];
        return ([.. order.Select(i => a[i][i])], [.. order.Select(i => v[i])]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static bool Sweep(double[][] a, double[][] v, int n)
    {
        bool turned = false;
        for (int p = 0; p < n; p++)
        {
            for (int q = p + 1; q < n; q++)
            {
                double off = a[p][q];
                if (off == 0 || Math.Abs(off) <= 1e-17 * Math.Sqrt(Math.Abs(a[p][p] * a[q][q])))
                {
                    continue;
                }

                turned = true;
                double tau = (a[q][q] - a[p][p]) / (2 * off);
                double t = Math.CopySign(1, tau) / (Math.Abs(tau) + Math.Sqrt(1 + (tau * tau)));
                double c = 1 / Math.Sqrt(1 + (t * t));
                double s = t * c;
                Rotate(a[p], a[q], c, s);
                Rotate(v[p], v[q], c, s);
                for (int k = 0; k < n; k++)
                {
                    double[] row = a[k];
                    (row[p], row[q]) = ((c * row[p]) - (s * row[q]), (s * row[p]) + (c * row[q]));
                }

                a[p][q] = a[q][p] = 0;
            }
        }

        return turned;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Rotate(double[] p, double[] q, double c, double s)
    {
        for (int k = 0; k < p.Length; k++)
        {
            (p[k], q[k]) = ((c * p[k]) - (s * q[k]), (s * p[k]) + (c * q[k]));
        }
    }
}
