using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Bridges;

namespace Formwright.Instrument.Body;

/// <summary>Holds the bridge against its rules.</summary>
internal static class BridgeChecks
{
    // Common practice: less wood ahead of the slot, under it or under a tie hole splits.
    private const double LeastAheadMm = 3;
    private const double LeastBelowSlotMm = 1.5;
    private const double LeastBelowTieMm = 2;

    internal static IEnumerable<Finding> Of(BodyPlan plan)
    {
        BridgePlan bridge = plan.Bridge;
        BridgeDesign design = plan.Guitar.Design.Bridge;
        Place place = new(plan.Guitar.JoinMm + bridge.Middle.X, 0);
        Point corner = bridge.Middle + new Vector(bridge.WidthMm / 2, bridge.LengthMm / 2);
        double room = plan.Guitar.Design.Ribs.ThicknessMm + plan.Guitar.Design.Ribs.LiningWidthMm;
        if (!BraceLines.HasRoom(plan.Guitar.Outline, corner, room))
        {
            yield return BodyRules.BridgeOutside.Broken(
                bridge.LengthMm,
                room,
                "bridge.length",
                place
            );
        }

        if (bridge.WoodAheadMm < LeastAheadMm)
        {
            yield return BodyRules.SlotNearFront.Broken(
                bridge.WoodAheadMm,
                LeastAheadMm,
                "saddle.ahead",
                place
            );
        }

        if (bridge.WoodBelowSlotMm < LeastBelowSlotMm || bridge.SlotDepthMm <= 0)
        {
            yield return BodyRules.SlotTooDeep.Broken(
                bridge.WoodBelowSlotMm,
                LeastBelowSlotMm,
                "saddle.slot_bottom",
                place
            );
        }

        if (design.MiddleMm < bridge.SlotLengthMm)
        {
            yield return BodyRules.MiddleTooShort.Broken(
                design.MiddleMm,
                bridge.SlotLengthMm,
                "bridge.middle",
                place
            );
        }

        double below = bridge.TieHeightMm - (design.TieHoleMm / 2);
        if (below < LeastBelowTieMm)
        {
            yield return BodyRules.TieHoleLow.Broken(
                below,
                LeastBelowTieMm,
                "saddle.tie_height",
                place
            );
        }
    }
}
