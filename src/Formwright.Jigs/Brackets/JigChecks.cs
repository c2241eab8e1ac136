using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;

namespace Formwright.Jigs.Brackets;

/// <summary>Holds a jig against its rules.</summary>
internal static class JigChecks
{
    public static IEnumerable<Finding> Of(JigPlan plan) =>
        Bracket(plan)
            .Concat(Slots(plan))
            .Concat(plan.Members.SelectMany(member => Member(plan, member)));

    private static IEnumerable<Finding> Bracket(JigPlan plan)
    {
        BracketDesign bracket = plan.Design.Bracket;
        if (!plan.Shape.FlanksMeet)
        {
            yield return JigRules.FlanksDoNotMeet.Broken(
                bracket.FrontFaceMm,
                bracket.RearFaceMm,
                "jig.bracket.front_slope",
                null,
                bracket.BaseMm
            );
            yield break;
        }

        // The opening is deepest into the flanks at its ends: the wood is measured square to the flank.
        double least = double.PositiveInfinity;
        foreach (double at in new[] { bracket.BoltFromMm, bracket.BoltToMm })
        {
            Point centre = new(at, 0);
            double inside = -Bodies.Distance(plan.Shape.Plan, centre);
            least = Math.Min(least, inside - (bracket.WasherDiameterMm / 2));
        }

        if (least < JigRules.LeastWoodMm)
        {
            yield return JigRules.TooLittleWood.Broken(
                least,
                JigRules.LeastWoodMm,
                "jig.bracket.washer_diameter"
            );
        }
    }

    private static IEnumerable<Finding> Slots(JigPlan plan)
    {
        if (plan.IsGiven)
        {
            for (int i = 0; i < plan.Slots.Count; i++)
            {
                if (plan.Members.All(member => member.Settings.All(each => each.Slot != i + 1)))
                {
                    yield return JigRules.SlotUnused.Broken(i + 1, 0, "jig.slots[0].from_x");
                }

                for (int k = 0; k < i; k++)
                {
                    SlotLine a = plan.Slots[k];
                    SlotLine b = plan.Slots[i];
                    double web =
                        Bodies.SegmentDistance(a.From, a.To, b.From, b.To) - plan.Hardware.HoleMm;
                    if (web < plan.Design.WebMm)
                    {
                        yield return JigRules.SlotsTooClose.Broken(
                            Math.Max(0, web),
                            plan.Design.WebMm,
                            "jig.slots[0].from_x",
                            null,
                            k + 1,
                            i + 1
                        );
                    }
                }
            }
        }
        else if (plan.Slots.Count > plan.LowerBound)
        {
            yield return JigRules.MoreSlotsThanBound.Broken(
                plan.Slots.Count,
                plan.LowerBound,
                "jig.largest_gap"
            );
        }
    }

    private static IEnumerable<Finding> Member(JigPlan plan, JigMember member)
    {
        BracketDesign bracket = plan.Design.Bracket;
        InstrumentDesign design = member.Rib.Guitar.Design;
        double ribs = Enumerable
            .Range(0, RibPoses.Count + 1)
            .Min(i =>
                member.Rib.RibHeightMm(
                    member.Rib.FromMm + ((member.Rib.ToMm - member.Rib.FromMm) * i / RibPoses.Count)
                )
            );
        if (member.LargestGapMm > plan.Design.LargestGapMm + 1e-6)
        {
            double middle = (member.GapFromMm + member.GapToMm) / 2;
            yield return JigRules.GapTooLong.Broken(
                member.LargestGapMm,
                plan.Design.LargestGapMm,
                "jig.largest_gap",
                At(member, member.Rib.Half.At(middle).Position),
                member.Name
            );
        }

        if (bracket.HeightMm > ribs)
        {
            yield return JigRules.BracketOverRibs.Broken(
                bracket.HeightMm,
                ribs,
                "jig.bracket.height",
                null,
                member.Name
            );
        }

        if (bracket.NotchHeightMm > ribs - JigRules.ElasticMm)
        {
            yield return JigRules.NotchTooHigh.Broken(
                bracket.NotchHeightMm,
                ribs - JigRules.ElasticMm,
                "jig.bracket.notch_height",
                null,
                member.Name
            );
        }

        if (design.Soundboard.OverhangMm > bracket.ReliefDepthMm)
        {
            yield return JigRules.OverhangMeetsBracket.Broken(
                design.Soundboard.OverhangMm,
                bracket.ReliefDepthMm,
                "jig.bracket.relief_depth",
                null,
                member.Name
            );
        }

        if (
            design.Soundboard.OverhangMm > 0
            && design.Soundboard.EdgeThicknessMm > bracket.ReliefHeightMm
        )
        {
            yield return JigRules.EdgeMeetsBracket.Broken(
                design.Soundboard.EdgeThicknessMm,
                bracket.ReliefHeightMm,
                "jig.bracket.relief_height",
                null,
                member.Name
            );
        }

        foreach (BracketSetting setting in member.Settings)
        {
            if (setting.Contact.GapMm > JigRules.WaistGapMm)
            {
                yield return JigRules.WaistGap.Broken(
                    setting.Contact.GapMm,
                    JigRules.WaistGapMm,
                    "jig.bracket.front_face",
                    At(member, setting.Contact.Middle),
                    setting.Slot,
                    member.Name
                );
            }
        }
    }

    // The bass side of the board is negative y of the instrument.
    private static Place At(JigMember member, Point onBoard) =>
        new(member.Rib.Guitar.JoinMm + onBoard.X - member.Rib.HeelXMm, -onBoard.Y);
}
