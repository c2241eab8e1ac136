using Formwright.Instrument.Action;

namespace Formwright.Jigs.BoardChecks;

/// <summary>What saddle and action become if the instrument is built on the board as it is. Strung, by the height chain.</summary>
/// <param name="SaddleBassMm">Saddle that the wanted action then needs under the lowest string, mm.</param>
/// <param name="SaddleTrebleMm">The same under the highest string, mm.</param>
/// <param name="PlannedSaddleBassMm">Saddle of the plan under the lowest string, mm.</param>
/// <param name="PlannedSaddleTrebleMm">The same under the highest string, mm.</param>
/// <param name="ActionBassMm">Action at fret 12 of the lowest string with the planned saddle, mm.</param>
/// <param name="ActionTrebleMm">The same of the highest string, mm.</param>
/// <param name="PlannedActionBassMm">Action of the plan, lowest string, mm.</param>
/// <param name="PlannedActionTrebleMm">Action of the plan, highest string, mm.</param>
public sealed record LeftAsIs(
    double SaddleBassMm,
    double SaddleTrebleMm,
    double PlannedSaddleBassMm,
    double PlannedSaddleTrebleMm,
    double ActionBassMm,
    double ActionTrebleMm,
    double PlannedActionBassMm,
    double PlannedActionTrebleMm
)
{
    /// <summary>Puts a ramp, which may differ on its two sides, into the chain.</summary>
    /// <param name="planned">The chain of the plan.</param>
    /// <param name="rampBassMm">Ramp at the bass edge of the neck, mm.</param>
    /// <param name="rampTrebleMm">Ramp at the treble edge, mm.</param>
    public static LeftAsIs Of(ChainModel planned, double rampBassMm, double rampTrebleMm)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ChainFigures figures = planned.Figures;
        HeightChain plan = planned.At(BuildStage.Strung);
        // A twisted ramp tilts the fingerboard at the nut; at the join the neck lies on the datum.
        ChainFigures found = figures with
        {
            RampMm = (rampBassMm + rampTrebleMm) / 2,
            NutTiltMm = figures.NutTiltMm + rampTrebleMm - rampBassMm,
        };
        HeightChain needed = (planned with { Figures = found }).Needed(BuildStage.Strung);
        ChainModel kept = planned with
        {
            Figures = found with
            {
                SaddleBassMm = plan.Bass.SaddleMm,
                SaddleTrebleMm = plan.Treble.SaddleMm,
            },
        };
        HeightChain action = kept.At(BuildStage.Strung);
        return new LeftAsIs(
            needed.Bass.SaddleMm,
            needed.Treble.SaddleMm,
            plan.Bass.SaddleMm,
            plan.Treble.SaddleMm,
            action.Bass.Action12Mm,
            action.Treble.Action12Mm,
            plan.Bass.Action12Mm,
            plan.Treble.Action12Mm
        );
    }
}
