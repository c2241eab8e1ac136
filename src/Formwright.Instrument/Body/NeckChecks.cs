using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.NeckBlanks;

namespace Formwright.Instrument.Body;

/// <summary>Holds head, heel and blank against their rules.</summary>
internal static class NeckChecks
{
    // Common practice.
    private const double LeastBetweenSlotsMm = 12;
    private const double LeastHeadWallMm = 7;
    private const double LeastBeyondPostMm = 15;
    private const double LeastRoundPostMm = 4;

    internal static IEnumerable<Finding> Of(BodyPlan plan)
    {
        NeckBlank blank = plan.Neck;
        HeadDesign head = plan.Guitar.Design.Head;
        HeelDesign heel = plan.Guitar.Design.Heel;
        Place join = new(plan.Guitar.JoinMm, 0);
        return Heel(blank, heel, plan.Guitar.Design.Blocks, join).Concat(Head(blank, head));
    }

    private static IEnumerable<Finding> Heel(
        NeckBlank blank,
        HeelDesign heel,
        BlocksDesign blocks,
        Place join
    )
    {
        if (blank.Slot is { } slot)
        {
            if (slot.BetweenMm <= 0)
            {
                yield return BodyRules.SlotPastCentre.Broken(
                    slot.DepthMm,
                    heel.WidthMm / 2,
                    "heel.slot_depth",
                    join
                );
            }
            else if (slot.BetweenMm < LeastBetweenSlotsMm)
            {
                yield return BodyRules.HeelThin.Broken(
                    slot.BetweenMm,
                    LeastBetweenSlotsMm,
                    "heel.slot_depth",
                    join
                );
            }

            if (heel.WedgeThickMm < heel.WedgeThinMm)
            {
                yield return BodyRules.WedgeUpsideDown.Broken(
                    heel.WedgeThickMm,
                    heel.WedgeThinMm,
                    "heel.wedge_thick",
                    join
                );
            }

            yield break;
        }

        double edge = 1.5 * heel.DowelMm;
        double[] heights = [.. blank.DowelHeightsMm];
        double nearest = Math.Min(heights[0], blank.HeelHeightMm - heights[^1]);
        double apart = heights.Length > 1 ? heights[1] - heights[0] : double.PositiveInfinity;
        if (nearest < edge || apart < 2 * edge)
        {
            yield return BodyRules.DowelEdge.Broken(
                Math.Min(nearest, apart / 2),
                edge,
                "heel.dowels",
                join
            );
        }

        double most = Math.Min(heel.LengthMm, blocks.HeelThicknessMm) * 2;
        if (heel.DowelLengthMm > most)
        {
            yield return BodyRules.DowelTooLong.Broken(
                heel.DowelLengthMm,
                most,
                "heel.dowel_length",
                join
            );
        }
    }

    private static IEnumerable<Finding> Head(NeckBlank blank, HeadDesign head)
    {
        Place nut = new(0, 0);
        double end = head.LengthMm - blank.HeadSlotMm.ToMm;
        if (end < LeastBeyondPostMm)
        {
            yield return BodyRules.HeadTooShort.Broken(
                head.LengthMm,
                blank.HeadSlotMm.ToMm + LeastBeyondPostMm,
                "head.length",
                nut
            );
        }

        double need = head.BetweenSlotsMm + (2 * (head.SlotWidthMm + LeastHeadWallMm));
        double narrow = Math.Min(head.WidthNutMm, head.WidthTipMm);
        if (narrow < need)
        {
            string key = head.WidthNutMm <= head.WidthTipMm ? "head.width_nut" : "head.width_tip";
            yield return BodyRules.HeadTooNarrow.Broken(narrow, need, key, nut);
        }

        double below = head.PostBelowFaceMm - (head.PostHoleMm / 2);
        double behind = head.ThicknessMm - head.PostBelowFaceMm - (head.PostHoleMm / 2);
        if (Math.Min(below, behind) < LeastRoundPostMm)
        {
            yield return BodyRules.PostOutOfWood.Broken(
                Math.Min(below, behind),
                LeastRoundPostMm,
                "head.post_below_face",
                nut
            );
        }
    }
}
