using Formwright.Instrument.Tolerances;

namespace Formwright.Instrument.Action;

/// <summary>How sure the action is: many builds with every figure somewhere within its tolerance.</summary>
/// <param name="Run">The builds.</param>
/// <param name="ActionBassMm">95 of 100 builds: action of the lowest string at fret 12, saddle as computed, mm.</param>
/// <param name="ActionTrebleMm">The same for the highest string, mm.</param>
/// <param name="SaddleBassMm">95 of 100 builds: saddle that the lowest string would need, mm.</param>
/// <param name="SaddleTrebleMm">The same for the highest string, mm.</param>
/// <param name="InBand">Chance that both actions land in the band with the saddle as computed.</param>
/// <param name="SaddleInRange">Chance that both saddle heights needed lie in what the bridge allows.</param>
/// <param name="BestSaddleShiftMm">By how much a saddle cut beforehand should stand higher for the best chance, mm.</param>
/// <param name="BestSaddleInBand">The chance it then has.</param>
/// <param name="BestRampMm">The ramp for which the saddle needed most surely lies in range, mm.</param>
/// <param name="BestRampInRange">The chance it then has.</param>
/// <param name="SaddleBlankMm">Height over the soundboard that a blank must reach so that 975 of 1000 builds can be cut down to their action, mm.</param>
public sealed record ChanceResult(
    MonteCarloResult Run,
    (double Low, double High) ActionBassMm,
    (double Low, double High) ActionTrebleMm,
    (double Low, double High) SaddleBassMm,
    (double Low, double High) SaddleTrebleMm,
    double InBand,
    double SaddleInRange,
    double BestSaddleShiftMm,
    double BestSaddleInBand,
    double BestRampMm,
    double BestRampInRange,
    double SaddleBlankMm
)
{
    // Chances closer than this are alike, so that the middle of a plateau is taken.
    private const double Alike = 5e-4;
    private const int Steps = 800;
    private const double ReachMm = 8;

    /// <summary>Runs the builds of a chain.</summary>
    /// <param name="batch">The model.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="bandMm">How far the action may miss, mm.</param>
    /// <param name="saddle">What the bridge allows, mm.</param>
    /// <param name="builds">How many builds.</param>
    /// <param name="seed">Their seed.</param>
    /// <param name="actionPerSaddle">Change of the action for one mm of saddle.</param>
    /// <param name="saddlePerRamp">Change of the saddle needed for one mm of ramp.</param>
    /// <param name="cores">Cores to use; 0 for all.</param>
    public static ChanceResult Of(
        ActionBatch batch,
        ChainFigures figures,
        double bandMm,
        (double Least, double Most) saddle,
        long builds,
        ulong seed,
        double actionPerSaddle,
        double saddlePerRamp,
        int cores = 0
    )
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(figures);
        MonteCarloResult run = MonteCarlo.Run(
            batch,
            builds,
            seed,
            [
                new((int)ActionOutput.LowestMiss, -bandMm, double.PositiveInfinity),
                new((int)ActionOutput.HighestMiss, double.NegativeInfinity, bandMm),
            ],
            cores
        );
        Spread Of(ActionOutput output) => run.Outputs[(int)output];
        Spread low = Of(ActionOutput.LowestSaddle);
        Spread high = Of(ActionOutput.HighestSaddle);
        (double actionShift, double inBand) = Best(shift =>
            Inside(
                Of(ActionOutput.LowestMiss),
                Of(ActionOutput.HighestMiss),
                -bandMm,
                bandMm,
                shift
            )
        );
        (double saddleShift, double inRange) = Best(shift =>
            Inside(low, high, saddle.Least, saddle.Most, shift)
        );
        return new(
            run,
            Of(ActionOutput.ActionBass).Interval95,
            Of(ActionOutput.ActionTreble).Interval95,
            Of(ActionOutput.SaddleBass).Interval95,
            Of(ActionOutput.SaddleTreble).Interval95,
            run.ChanceInBands,
            Inside(low, high, saddle.Least, saddle.Most, 0),
            actionShift / actionPerSaddle,
            inBand,
            figures.RampMm + (saddleShift / saddlePerRamp),
            inRange,
            high.Quantile(0.975)
        );
    }

    // Share of builds with the lower one over the low end and the higher one under the high end, all moved up by the shift. Exact where no build
    // misses both ends at once, as the two lie closer together than the ends.
    private static double Inside(
        Spread lower,
        Spread higher,
        double from,
        double to,
        double shift
    ) => Math.Max(0, higher.ShareBelow(to - shift) - lower.ShareBelow(from - shift));

    private static (double Shift, double Chance) Best(Func<double, double> chance)
    {
        double best = -1;
        double first = 0;
        double last = 0;
        double most = 0;
        for (int i = 0; i <= Steps; i++)
        {
            most = Math.Max(most, chance(ReachMm * ((2.0 * i / Steps) - 1)));
        }

        for (int i = 0; i <= Steps; i++)
        {
            double shift = ReachMm * ((2.0 * i / Steps) - 1);
            if (chance(shift) >= most - Alike)
            {
                first = best < 0 ? shift : first;
                best = 1;
                last = shift;
            }
        }

        double middle = 0.5 * (first + last);
        return (middle, chance(middle));
    }
}
