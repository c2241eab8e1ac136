namespace Formwright.Curves.Variation;

/// <summary>
/// The Newton step of one span, with the curvatures at its two ends left open. Variables: the bubbles of the curvature plot and the length, p;
/// the end curvatures, b; three constraints A_p p + A_b b + c = 0. The bubbles and the length are eliminated (<see cref="NullSpace"/>);
/// what is left is a 2 × 2 system in b, to be added up over the spans.
/// </summary>
internal sealed class SpanStep
{
    // (κ at the start, κ at the end) come first in every vector of a span.
    private const int Ends = 2;

    private readonly int size;
    private readonly double[][] hessian;
    private readonly double[][] towards;
    private readonly double[] image;
    private readonly NullSpace nullSpace;

    internal SpanStep(int bubbles)
    {
        size = bubbles + 1;
        hessian = NullSpace.Rows(size + Ends);
        towards = [new double[size], new double[size], new double[size]];
        image = new double[size + Ends];
        nullSpace = new NullSpace(size);
        Target = new SpanTarget(bubbles);
    }

    /// <summary>The way back onto the span's end.</summary>
    internal SpanTarget Target { get; }

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
            Target.Multipliers(span, Lambda);
        }

        span.Hessian(Lambda, hessian);
        if (shift > 0)
        {
            span.AddEnergy(hessian, shift * 2 / span.Length);
            hessian[size + 1][size + 1] += shift * SpanTarget.LengthWeight(span);
        }

        if (!nullSpace.Factor(hessian, span.Jacobian, Ends))
        {
            return false;
        }

        // p as an affine function of b: the constant part, and one for each end.
        Span<double> right = stackalloc double[3];
        for (int side = 0; side < 3; side++)
        {
            double[] p = towards[side];
            int column = side - 1;
            for (int i = 0; i < size; i++)
            {
                p[i] = side == 0 ? span.Gradient[i + Ends] : hessian[i + Ends][column];
            }

            for (int k = 0; k < 3; k++)
            {
                right[k] = side == 0 ? -span.Miss[k] : -span.Jacobian[k][column];
            }

            nullSpace.Solve(p, right);
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

    /// <summary>The quadratic model with p replaced by its affine function of b.</summary>
    private void Reduce(VariationSpan span)
    {
        // For b-directions d: full vector v_d = (b-part e_d, p-part towards[d]); constant part v_0 = (0, towards[0]).
        for (int d = 0; d < 2; d++)
        {
            double[] p = towards[d + 1];
            for (int i = 0; i < size + 2; i++)
            {
                double[] row = hessian[i];
                double sum = row[d];
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

            double gradient = span.Gradient[d];
            for (int j = 0; j < size; j++)
            {
                gradient += span.Gradient[j + Ends] * p[j];
                gradient += image[j + Ends] * towards[0][j];
            }

            EndGradient[d] = gradient;
        }
    }
}
