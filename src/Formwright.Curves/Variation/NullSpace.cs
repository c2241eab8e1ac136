namespace Formwright.Curves.Variation;

/// <summary>
/// Least ½pᵀHp + gᵀp under three linear constraints A p = r: an orthogonal change of variables (Householder) splits p into what the
/// constraints fix and what the energy fixes; the second is found by Cholesky's method, which also says whether the energy is truly
/// convex there.
/// </summary>
/// <remarks>Null-space method: Nocedal &amp; Wright, Numerical Optimization, section 16.2 (from memory).</remarks>
internal sealed class NullSpace
{
    private readonly int size;
    private readonly double[][] inner;
    private readonly double[][] reflectors;
    private readonly double[][] columns;
    private readonly double[] fixedPart = new double[3];
    private readonly double[,] triangle = new double[3, 3];
    private readonly double[] image;

    internal NullSpace(int size)
    {
        this.size = size;
        inner = Rows(size);
        reflectors = [new double[size], new double[size], new double[size]];
        columns = [new double[size], new double[size], new double[size]];
        image = new double[size];
    }

    /// <summary>Takes H and A (from an offset in rows and columns) and factors them.</summary>
    /// <returns>False when H is not convex on what the constraints leave free.</returns>
    internal bool Factor(double[][] hessian, double[][] jacobian, int offset)
    {
        for (int i = 0; i < size; i++)
        {
            Array.Copy(hessian[i + offset], offset, inner[i], 0, size);
        }

        for (int k = 0; k < 3; k++)
        {
            Array.Copy(jacobian[k], offset, columns[k], 0, size);
        }

        Reflect();
        for (int k = 0; k < 3; k++)
        {
            ApplyBothSides(reflectors[k], k);
        }

        return Cholesky();
    }

    /// <summary>The minimiser for one gradient and one right-hand side.</summary>
    /// <param name="p">g on entry, p on return.</param>
    /// <param name="right">r.</param>
    internal void Solve(double[] p, ReadOnlySpan<double> right)
    {
        for (int k = 0; k < 3; k++)
        {
            Apply(reflectors[k], k, p);
        }

        double[] y = fixedPart;
        for (int k = 0; k < 3; k++)
        {
            double goal = right[k];
            for (int i = 0; i < k; i++)
            {
                goal -= triangle[i, k] * y[i];
            }

            y[k] = goal / triangle[k, k];
        }

        for (int i = 3; i < size; i++)
        {
            double goal = -p[i];
            for (int k = 0; k < 3; k++)
            {
                goal -= inner[i][k] * y[k];
            }

            p[i] = goal;
        }

        Substitute(p);
        for (int k = 0; k < 3; k++)
        {
            p[k] = y[k];
        }

        for (int k = 2; k >= 0; k--)
        {
            Apply(reflectors[k], k, p);
        }
    }

    internal static double[][] Rows(int size)
    {
        double[][] made = new double[size][];
        for (int i = 0; i < size; i++)
        {
            made[i] = new double[size];
        }

        return made;
    }

    /// <summary>Householder reflectors that turn the transposed inner Jacobian into a 3 × 3 triangle.</summary>
    private void Reflect()
    {
        for (int k = 0; k < 3; k++)
        {
            double[] column = columns[k];
            for (int i = 0; i < k; i++)
            {
                Apply(reflectors[i], i, column);
            }

            double norm = 0;
            for (int i = k; i < size; i++)
            {
                norm += column[i] * column[i];
            }

            norm = Math.Sqrt(norm);
            double pivot = column[k] > 0 ? -norm : norm;
            double[] reflector = reflectors[k];
            Array.Copy(column, k, reflector, k, size - k);
            reflector[k] -= pivot;
            double squares = 0;
            for (int i = k; i < size; i++)
            {
                squares += reflector[i] * reflector[i];
            }

            double scale = Math.Sqrt(2 / squares);
            for (int i = k; i < size; i++)
            {
                reflector[i] *= scale;
            }

            for (int i = 0; i < k; i++)
            {
                triangle[i, k] = column[i];
            }

            triangle[k, k] = pivot;
        }
    }

    /// <summary>x ← (1 - vvᵀ)x with v zero before <paramref name="from"/>.</summary>
    private void Apply(double[] v, int from, double[] x)
    {
        double dot = 0;
        for (int i = from; i < size; i++)
        {
            dot += v[i] * x[i];
        }

        for (int i = from; i < size; i++)
        {
            x[i] -= dot * v[i];
        }
    }

    private void ApplyBothSides(double[] v, int from)
    {
        // H ← H - v wᵀ - w vᵀ with w = Hv - ½(vᵀHv)v.
        double[] w = image;
        double half = 0;
        for (int i = 0; i < size; i++)
        {
            double[] row = inner[i];
            double dot = 0;
            for (int j = from; j < size; j++)
            {
                dot += row[j] * v[j];
            }

            w[i] = dot;
            half += i >= from ? 0.5 * dot * v[i] : 0;
        }

        for (int i = from; i < size; i++)
        {
            w[i] -= half * v[i];
        }

        for (int i = 0; i < size; i++)
        {
            double[] row = inner[i];
            double vi = i >= from ? v[i] : 0;
            double wi = w[i];
            for (int j = 0; j < from; j++)
            {
                row[j] -= vi * w[j];
            }

            for (int j = from; j < size; j++)
            {
                row[j] -= (vi * w[j]) + (wi * v[j]);
            }
        }
    }

    /// <summary>Lower triangle of the part of the transformed Hessian that the constraints leave free.</summary>
    private bool Cholesky()
    {
        for (int i = 3; i < size; i++)
        {
            double[] row = inner[i];
            for (int j = 3; j <= i; j++)
            {
                double[] other = inner[j];
                double sum = row[j];
                for (int k = 3; k < j; k++)
                {
                    sum -= row[k] * other[k];
                }

                if (j < i)
                {
                    row[j] = sum / other[j];
                }
                else if (sum > 1e-12 * Math.Abs(row[j]))
                {
                    row[j] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    private void Substitute(double[] x)
    {
        for (int i = 3; i < size; i++)
        {
            double sum = x[i];
            for (int k = 3; k < i; k++)
            {
                sum -= inner[i][k] * x[k];
            }

            x[i] = sum / inner[i][i];
        }

        for (int i = size - 1; i >= 3; i--)
        {
            double sum = x[i];
            for (int k = i + 1; k < size; k++)
            {
                sum -= inner[k][i] * x[k];
            }

            x[i] = sum / inner[i][i];
        }
    }
}
