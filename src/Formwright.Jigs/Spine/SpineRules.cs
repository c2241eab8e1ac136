using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs.Mould;

namespace Formwright.Jigs.Spine;

/// <summary>Rules about spine and feet.</summary>
public static class SpineRules
{
    /// <summary>Sag of the board on its feet that still counts as flat, mm (common practice: a thin feeler gauge).</summary>
    public const double MostSagMm = 0.1;

    public static readonly Rule Warps = Make("spine.warps", Severity.Warn);
    public static readonly Rule Sags = Make("spine.sags", Severity.Warn);
    public static readonly Rule ThroatTooShort = Make("spine.throat-too-short", Severity.Warn);
    public static readonly Rule WiderThanNeck = Make("spine.wider-than-neck", Severity.Stop);
    public static readonly Rule CoversBolt = Make("spine.covers-bolt", Severity.Stop);
    public static readonly Rule NoPlaceForFeet = Make("spine.no-place-for-feet", Severity.Stop);

    internal static IEnumerable<Finding> Of(Guitar guitar, MouldPlan mould, SpinePlan plan)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        BoardFeet feet = plan.Feet;
        if (Math.Abs(plan.WarpMm) > board.RampToleranceMm)
        {
            yield return Warps.Broken(
                plan.WarpMm,
                board.RampToleranceMm,
                "workboard.spine.layers",
                new Place(0, 0),
                plan.Design.Layers,
                plan.LeastLayers is { } least
                    ? JigsWords.Of.Format("spine.enough", least)
                    : JigsWords.Of.Format("spine.not-enough", plan.ByLayers[^1].Layers)
            );
        }

        double sag = Math.Max(plan.SagMm, plan.TailSagMm);
        if (sag > MostSagMm)
        {
            bool atTail = plan.TailSagMm > plan.SagMm;
            yield return Sags.Broken(
                sag,
                MostSagMm,
                "workboard.spine.layers",
                new Place(atTail ? guitar.TailMm : (feet.NeckMiddleMm + feet.TailMiddleMm) / 2, 0),
                plan.Design.LoadN,
                JigsWords.Of[atTail ? "spine.at-tail" : "spine.between-feet"]
            );
        }

        if (board.Feet.ClampThroatMm < feet.ReachMm)
        {
            yield return ThroatTooShort.Broken(
                board.Feet.ClampThroatMm,
                feet.ReachMm,
                "workboard.feet.clamp_throat",
                new Place(guitar.TailMm, 0)
            );
        }

        if (plan.WidthMm > board.NeckWidthMm)
        {
            yield return WiderThanNeck.Broken(
                plan.WidthMm,
                board.NeckWidthMm,
                "workboard.spine.width"
            );
        }

        if (feet.TailMm - feet.LengthMm < feet.NeckMm + feet.LengthMm)
        {
            yield return NoPlaceForFeet.Broken(
                feet.TailMm,
                feet.NeckMm + (2 * feet.LengthMm),
                "workboard.feet.length"
            );
        }

        double half = (plan.WidthMm / 2) + BoardFeet.AroundBoltMm;
        Fastener? covered = mould
            .Fasteners.Where(each => each.Centre.X < feet.SpineEndMm + BoardFeet.AroundBoltMm)
            .MinBy(each => Math.Abs(each.Centre.Y));
        if (plan.DepthMm > 0 && covered is not null && Math.Abs(covered.Centre.Y) < half)
        {
            yield return CoversBolt.Broken(
                plan.WidthMm,
                2 * (Math.Abs(covered.Centre.Y) - BoardFeet.AroundBoltMm),
                "workboard.spine.width",
                new Place(covered.Centre.X, -covered.Centre.Y)
            );
        }
    }

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
