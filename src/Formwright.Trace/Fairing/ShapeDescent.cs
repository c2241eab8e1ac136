using Formwright.Curves;
using Formwright.Trace.Fitting;

namespace Formwright.Trace.Fairing;

/// <summary>
/// Fits the features of a minimum-variation outline to stations: Gauss-Newton whose derivatives are taken once and again only when the
/// steps no longer help. Stations are weighed by Tukey's biweight with a reach that shrinks with the misfit.
/// </summary>
internal sealed class ShapeDescent(int steps, IReadOnlyList<Station[]> sides)
{
    private const int MostSteps = 12;
    private const int MostSlopes = 3;
    private const double LongestStepMm = 10;

    /// <summary>What a fit came to.</summary>
    /// <param name="Prior">The outline.</param>
    /// <param name="Entries">Its entries.</param>
    /// <param name="Cost">Tukey's loss over all stations, mm², with the last reach.</param>
    /// <param name="TypicalMm">Standard deviation of the misfit, mm, as seven tenths of the stations tell it.</param>
    internal sealed record Result(
        ShapePrior Prior,
        double[] Entries,
        double Cost,
        double TypicalMm
    );

    internal Result? Run(double[] start)
    {
        double[] now = (double[])start.Clone();
        if (ShapePrior.Of(now) is not { } shape)
        {
            return null;
        }

        List<int> free = ShapePrior.Free(start);
        double[] misfit = Misfit(shape);
        double[][]? slopes = null;
        bool isFresh = false;
        int fresh = 0;
        double damping = 1e-6;
        for (int i = 0; i < MostSteps; i++)
        {
            if (slopes is null)
            {
                slopes = fresh < MostSlopes ? Slopes(now, misfit, free) : null;
                fresh++;
                isFresh = true;
                if (slopes is null)
                {
                    break;
                }
            }

            double reach = Reach(misfit);
            double[] step = Step(slopes, misfit, reach, damping);
            double[] next = (double[])now.Clone();
            for (int p = 0; p < free.Count; p++)
            {
                double limit = Math.Max(LongestStepMm, 0.1 * now[free[p]]);
                next[free[p]] += Math.Clamp(step[p], -limit, limit);
            }

            ShapePrior? other = ShapePrior.Of(next);
            double[]? moved = other is null ? null : Misfit(other);
            double before = Cost(misfit, reach);
            double after = moved is null ? double.PositiveInfinity : Cost(moved, reach);
            if (after >= before)
            {
                if (isFresh)
                {
                    // Even with fresh derivatives it does not fall: shorter steps, then enough.
                    damping = Math.Max(1e-3, damping * 30);
                    if (damping > 1)
                    {
                        break;
                    }
                }
                else
                {
                    slopes = null;
                }

                continue;
            }

            (now, shape, misfit) = (next, other!, moved!);
            if (before - after < 0.002 * before)
            {
                break;
            }

            isFresh = false;
            slopes = after > 0.5 * before && i < MostSteps - 4 ? null : slopes;
        }

        // The steps were taken on a coarser chain.
        if (ShapePrior.Of(now, MinimumVariation.UsualToleranceMm) is { } finer)
        {
            shape = finer;
            misfit = Misfit(finer);
        }

        return new Result(shape, now, Cost(misfit, Reach(misfit)), Typical(misfit));
    }

    /// <summary>Tukey's loss of a result over all stations with a reach of its own, mm².</summary>
    internal double Cost(Result result, double reachMm) => Cost(Misfit(result.Prior), reachMm);

    private double[][]? Slopes(double[] now, double[] misfit, List<int> free)
    {
        double[]?[] slopes = new double[]?[free.Count];
        Parallel.For(
            0,
            free.Count,
            p =>
            {
                double[] probe = (double[])now.Clone();
                double width = ShapePrior.Probe(free[p], now[free[p]]);
                probe[free[p]] += width;
                if (ShapePrior.Of(probe) is { } other)
                {
                    double[] moved = Misfit(other);
                    slopes[p] = [.. moved.Zip(misfit, (after, before) => (before - after) / width)];
                }
            }
        );
        return Array.Exists(slopes, row => row is null) ? null : [.. slopes.Select(row => row!)];
    }

    private static double[] Step(double[][] slopes, double[] misfit, double reach, double damping)
    {
        int n = slopes.Length;
        double[][] a = DenseSolver.Matrix(n);
        double[] b = new double[n];
        for (int i = 0; i < misfit.Length; i++)
        {
            double trust = Settling.Trust(misfit[i], reach);
            if (trust == 0)
            {
                continue;
            }

            for (int p = 0; p < n; p++)
            {
                b[p] += trust * slopes[p][i] * misfit[i];
                for (int q = 0; q < n; q++)
                {
                    a[p][q] += trust * slopes[p][i] * slopes[q][i];
                }
            }
        }

        for (int p = 0; p < n; p++)
        {
            a[p][p] *= 1 + damping;
        }

        return DenseSolver.Solve(a, b) ? b : new double[n];
    }

    private double[] Misfit(ShapePrior shape)
    {
        GridCurve grid = shape.ToGrid(steps);
        List<double> misfit = [];
        foreach (Station[] side in sides)
        {
            int hint = 0;
            foreach (Station station in side)
            {
                double distance = grid.Foot(station.Place, ref hint).Distance;
                // A station on a bump is one that is too far away to count.
                misfit.Add(station.IsBump ? double.PositiveInfinity : distance);
            }
        }

        return [.. misfit];
    }

    /// <summary>
    /// Standard deviation from the seventh decile: a shape that holds only half of the stations is no fit, while bumps on three tenths of
    /// the length still do no harm.
    /// </summary>
    private static double Typical(double[] misfit)
    {
        double[] sizes = [.. misfit.Where(double.IsFinite).Select(Math.Abs)];
        Array.Sort(sizes);
        return sizes[(int)(0.7 * sizes.Length)] / 1.0364;
    }

    /// <summary>4.685 standard deviations, the biweight's usual reach; never below 0.05 mm.</summary>
    private static double Reach(double[] misfit) => Math.Max(0.05, 4.685 * Typical(misfit));

    /// <summary>Tukey's loss: a squared distance that levels off at the reach.</summary>
    private static double Cost(double[] misfit, double reach)
    {
        double sum = 0;
        foreach (double each in misfit)
        {
            double u = double.IsFinite(each) ? Math.Min(1, each * each / (reach * reach)) : 0;
            sum += reach * reach / 6 * (1 - ((1 - u) * (1 - u) * (1 - u)));
        }

        return sum;
    }
}
