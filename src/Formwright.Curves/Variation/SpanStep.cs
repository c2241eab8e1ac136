namespace Formwright.Curves.Variation;

/// <summary>
/// The Newton step of one span, with the curvatures at its two ends left open. Variables: the bubbles of the curvature plot and the length, p;
/// the end curvatures, b; three constraints A_p p + A_b b + c = 0. An orthogonal change of variables (Householder) splits p into the
/// part that the constraints fix and the part that the energy fixes; the second is found by Cholesky's method, which also says whether
/// the energy is truly convex there. What is left is a 2 × 2 system in b, to be added up over the spans.
/// </summary>
/// <remarks>Null-space method for equality constraints: Nocedal &amp; Wright, Numerical Optimization, section 16.2 (from memory).</remarks>
internal sealed class SpanStep
{
    // (κ at the start, κ at the end) come first in every vector of a span.
    private const int Ends = 2;

    private readonly int size;
    private readonly double[][] hessian;
    private readonly double[][] inner;
    private readonly double[][] reflectors;
    private readonly double[] fixedPart = new double[3];
    private readonly double[,] triangle = new double[3, 3];
    private readonly double[][] towards;
    private readonly double[] image;
    private readonly double[] kept;

    internal SpanStep(int bubbles)
    {
        size = bubbles + 1;
        hessian = Rows(size + 2, size + 2);
        inner = Rows(size, size);
        reflectors = Rows(3, size);
        towards = Rows(3, size);
        image = new double[size + 2];
        kept = new double[size];
    }

    /// <summary>Least-squares multipliers.</summary>
    internal double[] Lambda { get; } = new double[3];

    /// <summary>Reduced Hessian over both end curvatures.</summary>
    internal double[,] EndHessian { get; } = new double[2, 2];

    /// <summary>Reduced gradient over both end curvatures.</summary>
    internal double[] EndGradient { get; } = new double[2];

    /// <summary>
    /// Builds and factors the span's system at its present state.
    /// </summary>
    /// <param name="span">Evaluated and on target.</param>
    /// <param name="shift">How much of the energy's own convexity is added.</param>
    /// <returns>False when the energy is not convex here even with the shift.</returns>
    internal bool Build(VariationSpan span, double shift)
    {
        if (shift == 0)
        {
            Multipliers(span);
        }

        span.Hessian(Lambda, hessian);
        if (shift > 0)
        {
            span.AddEnergy(hessian, shift * 2 / span.Length);
            hessian[size + 1][size + 1] += shift * LengthWeight(span);
        }

        for (int i = 0; i < size; i++)
        {
            Array.Copy(hessian[i + Ends], Ends, inner[i], 0, size);
        }

        Reflect(span);
        for (int k = 0; k < 3; k++)
        {
            ApplyBothSides(reflectors[k], k);
        }

        if (!Cholesky())
        {
            return false;
        }

        // p as an affine function of b: three right-hand sides, the constant one and one for each end.
        for (int side = 0; side < 3; side++)
        {
            double[] p = towards[side];
            int column = side == 1 ? 0 : 1;
            for (int i = 0; i < size; i++)
            {
                p[i] = side == 0 ? span.Gradient[i + Ends] : hessian[i + Ends][column];
            }

            for (int k = 0; k < 3; k++)
            {
                Apply(reflectors[k], k, p);
            }

            double[] y = fixedPart;
            for (int k = 0; k < 3; k++)
            {
                double goal = side == 0 ? -span.Miss[k] : -span.Jacobian[k][column];
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

        Reduce(span);
        return true;
    }

    /// <summary>The step of (plot, L) for given steps of the end curvatures.</summary>
    internal void Step(double first, double final, double[] into)
    {
        into[0] = first;
        into[1] = final;
        for (int i = 0; i < size; i++)
        {
            into[i + Ends] = towards[0][i] + (towards[1][i] * first) + (towards[2][i] * final);
        }
    }

    /// <summary>
    /// Moves the bubbles and the length so that the span meets its end, changing the curvature plot as evenly as it can
    /// (least norm in the energy's own metric), by Newton's method.
    /// </summary>
    /// <returns>False when that fails within the allowed steps.</returns>
    internal bool Meet(VariationSpan span)
    {
        span.Evaluate();
        double before = Missed(span);
        for (int round = 0; round < 40; round++)
        {
            if (before < 1e-13)
            {
                return true;
            }

            Metric(span);
            Span<double> miss = [span.Miss[0], span.Miss[1], span.Miss[2]];
            double[] weights = SolveThree(Gram(span), miss);
            double keptLength = span.Length;
            Array.Copy(span.Plot, Ends, kept, 0, size - 1);
            double stepLength = 0;
            for (int k = 0; k < 3; k++)
            {
                stepLength -= weights[k] * towards[k][size - 1];
            }

            if (!double.IsFinite(stepLength))
            {
                return false;
            }

            double share = Math.Min(1, 0.3 * span.Length / Math.Max(1e-300, Math.Abs(stepLength)));
            bool better = false;
            for (int halving = 0; halving < 12 && !better; halving++)
            {
                span.Length = keptLength + (share * stepLength);
                for (int i = 0; i < size - 1; i++)
                {
                    double step =
                        (weights[0] * towards[0][i])
                        + (weights[1] * towards[1][i])
                        + (weights[2] * towards[2][i]);
                    span.Plot[i + Ends] = kept[i] - (share * step);
                }

                span.Evaluate();
                double now = Missed(span);
                better = now < before * (1 - (0.1 * share));
                // At the floor of rounding nothing gets better any more.
                if (!better && now < 1e-11 && before < 1e-11)
                {
                    return true;
                }

                share *= 0.5;
                before = better ? now : before;
            }

            if (!better)
            {
                return false;
            }
        }

        return false;
    }

    private static double Missed(VariationSpan span) =>
        Math.Max(Math.Abs(span.Miss[0]), Math.Max(Math.Abs(span.Miss[1]), Math.Abs(span.Miss[2])));

    /// <summary>What a change of length costs, on the scale of the energy's own metric.</summary>
    private static double LengthWeight(VariationSpan span)
    {
        double squares = 0.25 / (span.Length * span.Length);
        squares = Math.Max(squares, span.Plot[0] * span.Plot[0]);
        squares = Math.Max(squares, span.Plot[1] * span.Plot[1]);

        return 10 * squares / (span.Length * span.Length * span.Length);
    }

    /// <summary>Rows of A_p times the inverse of the metric, which is diagonal.</summary>
    private void Metric(VariationSpan span)
    {
        double bubble = 0.5 * span.Length;
        double length = 1 / LengthWeight(span);
        for (int k = 0; k < 3; k++)
        {
            for (int i = 0; i < size; i++)
            {
                towards[k][i] = span.Jacobian[k][i + Ends] * (i < size - 1 ? bubble : length);
            }
        }
    }

    private double[,] Gram(VariationSpan span)
    {
        double[,] gram = new double[3, 3];
        for (int k = 0; k < 3; k++)
        {
            for (int m = 0; m < 3; m++)
            {
                double sum = 0;
                for (int i = 0; i < size; i++)
                {
                    sum += towards[k][i] * span.Jacobian[m][i + Ends];
                }

                gram[k, m] = sum;
            }
        }

        return gram;
    }

    private void Multipliers(VariationSpan span)
    {
        Metric(span);
        Span<double> right = stackalloc double[3];
        for (int k = 0; k < 3; k++)
        {
            for (int i = 0; i < size; i++)
            {
                right[k] += towards[k][i] * span.Gradient[i + Ends];
            }
        }

        SolveThree(Gram(span), right).CopyTo(Lambda, 0);
    }

    internal static double[] SolveThree(double[,] m, ReadOnlySpan<double> right)
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

    /// <summary>Householder reflectors that turn the transposed inner Jacobian into a 3 × 3 triangle.</summary>
    private void Reflect(VariationSpan span)
    {
        double[][] columns = towards;
        for (int k = 0; k < 3; k++)
        {
            for (int i = 0; i < size; i++)
            {
                columns[k][i] = span.Jacobian[k][i + Ends];
            }
        }

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

    /// <summary>The quadratic model with p replaced by its affine function of b.</summary>
    private void Reduce(VariationSpan span)
    {
        // For b-directions d: full vector v_d = (b-part e_d, p-part towards[d]); constant part v_0 = (0, towards[0]).
        for (int d = 0; d < 2; d++)
        {
            double[] p = towards[d + 1];
            int column = d;
            for (int i = 0; i < size + 2; i++)
            {
                double[] row = hessian[i];
                double sum = row[column];
                for (int j = 0; j < size; j++)
                {
                    sum += row[j + Ends] * p[j];
                }

                image[i] = sum;
            }

            for (int e = 0; e < 2; e++)
            {
                double[] other = towards[e + 1];
                double sum = image[e];
                for (int j = 0; j < size; j++)
                {
                    sum += image[j + Ends] * other[j];
                }

                EndHessian[d, e] = sum;
            }

            double gradient = span.Gradient[column];
            for (int j = 0; j < size; j++)
            {
                gradient += span.Gradient[j + Ends] * p[j];
                gradient += image[j + Ends] * towards[0][j];
            }

            EndGradient[d] = gradient;
        }
    }

    private static double[][] Rows(int rows, int columns)
    {
        double[][] made = new double[rows][];
        for (int i = 0; i < rows; i++)
        {
            made[i] = new double[columns];
        }

        return made;
    }
}
