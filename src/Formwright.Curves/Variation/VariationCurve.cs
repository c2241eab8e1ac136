namespace Formwright.Curves.Variation;

/// <summary>
/// The four spans of an outline, joined in curvature, brought to the least ∫κ'² ds that can be reached downhill from where they are.
/// </summary>
/// <remarks>
/// Damped Newton on the constraint surface: each step solves the whole quadratic model (spans eliminated one by one, then 5 × 5
/// in the features' curvatures), then every span is brought back onto its end and the energy is compared. Downhill all the way, so a
/// curve without loops does not jump into one with loops. Exact second derivatives: quadratic convergence.
/// </remarks>
internal sealed class VariationCurve
{
    private const int MostIterations = 60;
    private const double LargestStretch = 3;

    private readonly SpanStep[] steps;
    private readonly double[][] moves;

    internal VariationCurve(VariationSpan[] spans, bool[] isFixed)
    {
        Spans = spans;
        IsFixed = isFixed;
        steps = [.. spans.Select(span => new SpanStep(span.Bubbles))];
        moves = [.. spans.Select(span => new double[span.Bubbles + 3])];
    }

    internal VariationSpan[] Spans { get; }

    /// <summary>For each feature, whether its curvature is given.</summary>
    internal bool[] IsFixed { get; }

    internal int Iterations { get; private set; }

    internal double Energy => Spans.Sum(span => span.Energy);

    internal double Length => Spans.Sum(span => span.Length);

    /// <summary>The same curve with room for more bubbles in each span.</summary>
    internal VariationCurve With(int bubbles) =>
        new([.. Spans.Select(span => span.With(bubbles))], [.. IsFixed])
        {
            Iterations = Iterations,
        };

    /// <summary>A copy of the curve that can be thrown away.</summary>
    internal VariationCurve Copied() => With(Spans[0].Bubbles);

    /// <summary>Curvature at a feature (0 heel … 4 tail).</summary>
    internal double CurvatureAt(int feature) =>
        feature == 0 ? Spans[0].Plot[0] : Spans[feature - 1].Plot[1];

    internal void SetCurvature(int feature, double kappa)
    {
        if (feature > 0)
        {
            Spans[feature - 1].Plot[1] = kappa;
        }

        if (feature < 4)
        {
            Spans[feature].Plot[0] = kappa;
        }
    }

    /// <summary>The span in which <see cref="Settle"/> failed, by its first feature.</summary>
    internal int FailedSpan { get; private set; }

    /// <summary>The failed span grew without end: there is no minimum without a loop.</summary>
    internal bool RanOff { get; private set; }

    /// <summary>Brings every span onto its end, then goes downhill to the nearest minimum.</summary>
    /// <returns>False when that is not reached within the allowed work; see <see cref="FailedSpan"/>.</returns>
    internal bool Settle() => Meet() && Minimise();

    private bool Meet()
    {
        for (int m = 0; m < Spans.Length; m++)
        {
            if (!steps[m].Target.Meet(Spans[m]))
            {
                FailedSpan = m;
                return false;
            }
        }

        return true;
    }

    /// <summary>How long a span is for the distance that it covers; a quarter circle has 0.8.</summary>
    private static double Stretch(VariationSpan span)
    {
        Vector across = span.To - span.From;
        return span.Length / (Math.Abs(across.X) + Math.Abs(across.Y));
    }

    /// <summary>How much a span asks of the curve: sideways for each step along where it is S-shaped, imbalance where it is a quarter turn.</summary>
    private static double Demand(VariationSpan span)
    {
        Vector across = span.To - span.From;
        double slope = Math.Abs(across.Y) / across.X;
        bool isQuarter = span.FromAngle != span.ToAngle;
        return isQuarter ? 0.3 * Math.Max(slope, 1 / slope) : slope;
    }

    /// <summary>The span to blame is the one that asks most.</summary>
    private bool Failed()
    {
        FailedSpan = 0;
        for (int m = 1; m < Spans.Length; m++)
        {
            FailedSpan = Demand(Spans[m]) > Demand(Spans[FailedSpan]) ? m : FailedSpan;
        }

        RanOff = Spans.Any(span => Stretch(span) > LargestStretch);
        return false;
    }

    private bool Minimise()
    {
        double energy = Energy;
        int settled = 0;
        for (int round = 0; round < MostIterations; round++)
        {
            if (!Direction())
            {
                return Failed();
            }

            Iterations++;
            double slope = Slope();
            bool isClose = -slope <= 1e-7 * energy || energy < 1e-14;
            double share = LargestShare();
            (double[][] kept, double[] lengths) = Keep();
            bool done = false;
            for (int halving = 0; halving < 20 && !done; halving++)
            {
                Move(share);
                if (Meet() && IsSane(lengths))
                {
                    double now = Energy;
                    done = (isClose && share == 1) || now <= energy + (1e-4 * share * slope);
                    energy = done ? now : energy;
                }

                if (!done)
                {
                    Restore(kept, lengths);
                    share *= 0.5;
                }
            }

            if (!done)
            {
                foreach (VariationSpan span in Spans)
                {
                    span.Evaluate();
                }

                return isClose || Failed();
            }

            if (Spans.Any(span => Stretch(span) > LargestStretch))
            {
                return Failed();
            }

            settled = isClose ? settled + 1 : 0;
            if (isClose && (-slope <= 1e-13 * energy || energy < 1e-14 || settled >= 3))
            {
                return true;
            }
        }

        return Failed();
    }

    private bool Direction()
    {
        double shift = 0;
        for (int tries = 0; tries < 14; tries++)
        {
            bool isConvex = true;
            for (int m = 0; m < Spans.Length; m++)
            {
                isConvex &= steps[m].Build(Spans[m], shift);
            }

            if (isConvex && EndSteps(shift) is { } ends)
            {
                for (int m = 0; m < Spans.Length; m++)
                {
                    steps[m].Step(ends[m], ends[m + 1], moves[m]);
                }

                return true;
            }

            shift = shift == 0 ? 0.01 : shift * 4;
        }

        return false;
    }

    /// <summary>Steps of the five curvatures from the tridiagonal sum of the spans' reduced systems; null when it is not convex.</summary>
    private double[]? EndSteps(double shift)
    {
        int count = Spans.Length + 1;
        double[] diagonal = new double[count];
        double[] beside = new double[count];
        double[] right = new double[count];
        for (int m = 0; m < Spans.Length; m++)
        {
            diagonal[m] += steps[m].EndHessian[0, 0];
            diagonal[m + 1] += steps[m].EndHessian[1, 1];
            beside[m] = steps[m].EndHessian[0, 1];
            right[m] -= steps[m].EndGradient[0];
            right[m + 1] -= steps[m].EndGradient[1];
        }

        for (int i = 0; i < count; i++)
        {
            diagonal[i] += shift * 1e-3;
            if (IsFixed[i])
            {
                diagonal[i] = 1;
                right[i] = 0;
                beside[i] = 0;
                if (i > 0)
                {
                    beside[i - 1] = 0;
                }
            }
        }

        for (int i = 0; i < count; i++)
        {
            if (i > 0)
            {
                double factor = beside[i - 1] / diagonal[i - 1];
                diagonal[i] -= factor * beside[i - 1];
                right[i] -= factor * right[i - 1];
            }

            if (!(diagonal[i] > 0))
            {
                return null;
            }
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double next = i + 1 < count ? beside[i] * right[i + 1] : 0;
            right[i] = (right[i] - next) / diagonal[i];
        }

        return right;
    }

    private double Slope()
    {
        double slope = 0;
        for (int m = 0; m < Spans.Length; m++)
        {
            for (int i = 0; i < moves[m].Length; i++)
            {
                slope += Spans[m].Gradient[i] * moves[m][i];
            }
        }

        return slope;
    }

    /// <summary>At most a full step, about half a radian of turning anywhere, and a quarter of a span's length.</summary>
    private double LargestShare()
    {
        double most = 0;
        for (int m = 0; m < Spans.Length; m++)
        {
            double[] move = moves[m];
            VariationSpan span = Spans[m];
            double turned = 0.5 * (Math.Abs(move[0]) + Math.Abs(move[1]));
            for (int k = 1; k <= span.Bubbles; k++)
            {
                // The largest area of a bubble falls with its number.
                turned += Math.Abs(move[k + 1]) / (2 * k * ((2 * k) + 1));
            }

            most = Math.Max(
                most,
                Math.Max(span.Length * turned, 2 * Math.Abs(move[^1]) / span.Length)
            );
        }

        return Math.Min(1, 0.5 / Math.Max(most, 1e-300));
    }

    private void Move(double share)
    {
        for (int m = 0; m < Spans.Length; m++)
        {
            for (int i = 0; i < Spans[m].Plot.Length; i++)
            {
                Spans[m].Plot[i] += share * moves[m][i];
            }

            Spans[m].Length += share * moves[m][^1];
        }
    }

    /// <summary>The way back onto the ends must not have run off to another curve.</summary>
    private bool IsSane(double[] lengths)
    {
        for (int m = 0; m < Spans.Length; m++)
        {
            double ratio = Spans[m].Length / lengths[m];
            if (!(ratio > 0.5 && ratio < 2))
            {
                return false;
            }
        }

        return true;
    }

    private (double[][] Plots, double[] Lengths) Keep() =>
        ([.. Spans.Select(span => (double[])span.Plot.Clone())], [.. Spans.Select(s => s.Length)]);

    private void Restore(double[][] plots, double[] lengths)
    {
        for (int m = 0; m < Spans.Length; m++)
        {
            Array.Copy(plots[m], Spans[m].Plot, plots[m].Length);
            Spans[m].Length = lengths[m];
        }
    }
}
