namespace Formwright.Curves.Adapting;

/// <summary>The equations of an <see cref="Adaptation"/>: a curvature plot that is changed until it meets features.</summary>
internal sealed class AdaptedPlot
{
    private const int MostRounds = 80;

    /// <summary>Most that a figure may change in one round: a third of a length, or of the mean curvature.</summary>
    private const double MostStep = 0.3;

    private const double ProbeShare = 1e-6;
    private const double MeetMm = 1e-9;

    private readonly OutlineFeatures features;
    private readonly double[] lengths;
    private readonly double[] curvatures;
    private readonly double meanCurvature;
    private readonly double[] weights;
    private readonly OutlineStation[] stations;
    private readonly double[] turns = new double[3];
    private double[] x;

    private AdaptedPlot(CurvaturePlot plot, OutlineFeatures features, double[] turns)
    {
        this.features = features;
        lengths = [.. plot.LengthsMm];
        curvatures = [.. plot.Curvatures];
        stations = [features.UpperBout, features.Waist, features.LowerBout];
        turns.CopyTo(this.turns, 0);
        int n = lengths.Length;
        meanCurvature = Math.PI / plot.LengthMm;
        x = new double[(2 * n) + 1];
        weights = new double[x.Length];
        for (int i = 0; i < n; i++)
        {
            double share = lengths[i] / plot.LengthMm;
            weights[i] = share;
            weights[n + i] += share / 2;
            weights[n + i + 1] += share / 2;
        }
    }

    /// <summary>The feature that is met worst.</summary>
    internal OutlineFeature Worst { get; private set; } = OutlineFeature.Tail;

    /// <summary>The source scaled to the new body length; null where it has no bouts and waist.</summary>
    internal static AdaptedPlot? Start(Outline source, OutlineFeatures features)
    {
        IReadOnlyList<ChainPoint> turns = source.Half.TangentsAlong(0);
        if (turns.Count != 3)
        {
            return null;
        }

        double factor = features.BodyLengthMm / source.BodyLengthMm;
        CurvaturePlot plot = CurvaturePlot.Of(source);
        return new AdaptedPlot(
            new CurvaturePlot(
                [.. plot.LengthsMm.Select(length => length * factor)],
                [.. plot.Curvatures.Select(kappa => kappa / factor)]
            ),
            features,
            [.. turns.Select(turn => turn.ArcLengthMm * factor)]
        );
    }

    /// <summary>Whether the features could be met.</summary>
    internal bool Solve()
    {
        double[] now = Equations(x);
        for (int round = 0; round < MostRounds; round++)
        {
            double[,] slopes = Slopes(now);
            if (Next(now, slopes) is not { } next)
            {
                return false;
            }

            double largest = 0;
            for (int i = 0; i < x.Length; i++)
            {
                largest = Math.Max(largest, Math.Abs(next[i] - x[i]));
            }

            double share = Math.Min(1, MostStep / Math.Max(largest, 1e-300));
            for (int i = 0; i < x.Length; i++)
            {
                x[i] += share * (next[i] - x[i]);
            }

            now = Equations(x);
            if (now.Any(each => !double.IsFinite(each)))
            {
                return false;
            }

            double worst = now.Max(Math.Abs);
            Worst = FeatureOf(Array.FindIndex(now, each => Math.Abs(each) == worst));
            if (worst < MeetMm && largest < 1e-7)
            {
                return true;
            }
        }

        return now.Max(Math.Abs) < 1e3 * MeetMm;
    }

    internal Outline? ToOutline() => Plot(x).Closed()?.ToOutline();

    private static OutlineFeature FeatureOf(int equation) =>
        equation switch
        {
            < 2 => OutlineFeature.UpperBout,
            < 4 => OutlineFeature.Waist,
            < 6 => OutlineFeature.LowerBout,
            < 9 => OutlineFeature.Tail,
            9 => OutlineFeature.UpperBout,
            10 => OutlineFeature.Waist,
            _ => OutlineFeature.LowerBout,
        };

    private CurvaturePlot Plot(double[] at)
    {
        int n = lengths.Length;
        double[] l = new double[n];
        double[] k = new double[n + 1];
        for (int i = 0; i <= n; i++)
        {
            if (i < n)
            {
                l[i] = lengths[i] * Math.Exp(at[i]);
            }

            k[i] = curvatures[i] + (meanCurvature * at[n + i]);
        }

        return new CurvaturePlot(l, k);
    }

    /// <summary>
    /// What is not met, mm: u and half width of the three features where the tangent runs along; the end's u, y and direction (on an arm of
    /// 100 mm); radii, where fixed (in relative curvature times 100 mm).
    /// </summary>
    private double[] Equations(double[] at)
    {
        const double arm = 100;
        Chain half = Plot(at).ToChain();
        double[] rest = new double[12];
        for (int k = 0; k < 3; k++)
        {
            CurvePoint place = Turn(half, k);
            rest[2 * k] = place.Position.X - stations[k].UMm;
            rest[(2 * k) + 1] = place.Position.Y - (0.5 * stations[k].WidthMm);
            if (stations[k].RadiusMm is { } radius)
            {
                double wanted = (k == 1 ? 1 : -1) / radius;
                rest[9 + k] = arm * ((place.Curvature / wanted) - 1);
            }
        }

        rest[6] = half.End.Position.X - features.BodyLengthMm;
        rest[7] = half.End.Position.Y;
        rest[8] = arm * (half.End.Angle + (0.5 * Math.PI));
        return rest;
    }

    /// <summary>The place near the last turn of this feature where the tangent runs along the centreline.</summary>
    private CurvePoint Turn(Chain half, int k)
    {
        double s = Math.Clamp(turns[k], 0, half.LengthMm);
        CurvePoint place = half.At(s);
        for (int i = 0; i < 12 && Math.Abs(place.Angle) > 1e-13 && place.Curvature != 0; i++)
        {
            double step = Math.Clamp(-place.Angle / place.Curvature, -10, 10);
            s = Math.Clamp(s + step, 0, half.LengthMm);
            place = half.At(s);
        }

        turns[k] = s;
        return place;
    }

    private double[,] Slopes(double[] now)
    {
        double[,] slopes = new double[now.Length, x.Length];
        double[] probe = (double[])x.Clone();
        for (int i = 0; i < x.Length; i++)
        {
            probe[i] = x[i] + ProbeShare;
            double[] after = Equations(probe);
            probe[i] = x[i] - ProbeShare;
            double[] before = Equations(probe);
            probe[i] = x[i];
            for (int e = 0; e < now.Length; e++)
            {
                slopes[e, i] = (after[e] - before[e]) / (2 * ProbeShare);
            }
        }

        return slopes;
    }

    /// <summary>The least weighed change from the source under the linearised equations: x = W⁻¹ Jᵀ λ with J W⁻¹ Jᵀ λ = J x - c.</summary>
    private double[]? Next(double[] now, double[,] slopes)
    {
        int equations = now.Length;
        double[,] a = new double[equations, equations];
        double[] b = new double[equations];
        for (int e = 0; e < equations; e++)
        {
            // An equation that does not depend on anything (a free radius) is met.
            a[e, e] = 1e-12;
            b[e] = -now[e];
            for (int i = 0; i < x.Length; i++)
            {
                b[e] += slopes[e, i] * x[i];
                double scaled = slopes[e, i] / weights[i];
                for (int f = 0; f < equations; f++)
                {
                    a[e, f] += scaled * slopes[f, i];
                }
            }
        }

        if (!Eliminate(a, b))
        {
            return null;
        }

        double[] next = new double[x.Length];
        for (int i = 0; i < x.Length; i++)
        {
            for (int e = 0; e < equations; e++)
            {
                next[i] += slopes[e, i] * b[e] / weights[i];
            }
        }

        return next;
    }

    /// <summary>Cholesky's method in place; false when the matrix is not positive definite.</summary>
    private static bool Eliminate(double[,] a, double[] b)
    {
        int n = b.Length;
        for (int j = 0; j < n; j++)
        {
            for (int i = j; i < n; i++)
            {
                double sum = a[i, j];
                for (int k = 0; k < j; k++)
                {
                    sum -= a[i, k] * a[j, k];
                }

                if (i == j)
                {
                    if (!(sum > 0))
                    {
                        return false;
                    }

                    a[j, j] = Math.Sqrt(sum);
                }
                else
                {
                    a[i, j] = sum / a[j, j];
                }
            }
        }

        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < i; k++)
            {
                b[i] -= a[i, k] * b[k];
            }

            b[i] /= a[i, i];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < n; k++)
            {
                b[i] -= a[k, i] * b[k];
            }

            b[i] /= a[i, i];
        }

        return true;
    }
}
