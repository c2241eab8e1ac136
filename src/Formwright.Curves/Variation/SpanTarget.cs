namespace Formwright.Curves.Variation;

/// <summary>
/// Brings a span onto its end in the energy's own metric, and finds the multipliers that the constraints have there: both need the
/// 3 × 3 Gram matrix of the constraints' gradients.
/// </summary>
internal sealed class SpanTarget
{
    // (κ at the start, κ at the end) come first in every vector of a span.
    private const int Ends = 2;

    private readonly int size;
    private readonly double[][] towards;
    private readonly double[] kept;

    internal SpanTarget(int bubbles)
    {
        size = bubbles + 1;
        towards = [new double[size], new double[size], new double[size]];
        kept = new double[size];
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
            double[] weights = ThreeByThree.Solve(Gram(span), miss);
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

    /// <summary>Least-squares multipliers of the constraints at the present state.</summary>
    internal void Multipliers(VariationSpan span, double[] lambda)
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

        ThreeByThree.Solve(Gram(span), right).CopyTo(lambda, 0);
    }

    /// <summary>What a change of length costs, on the scale of the energy's own metric.</summary>
    internal static double LengthWeight(VariationSpan span)
    {
        double squares = 0.25 / (span.Length * span.Length);
        squares = Math.Max(squares, span.Plot[0] * span.Plot[0]);
        squares = Math.Max(squares, span.Plot[1] * span.Plot[1]);

        return 10 * squares / (span.Length * span.Length * span.Length);
    }

    private static double Missed(VariationSpan span) =>
        Math.Max(Math.Abs(span.Miss[0]), Math.Max(Math.Abs(span.Miss[1]), Math.Abs(span.Miss[2])));

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
}
