using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Ribs;

namespace Formwright.Instrument.Body;

/// <summary>Holds soundboard, back and ribs against their rules; braces, bridge and neck have files of their own.</summary>
internal static class BodyChecks
{
    // Closer kerfs than this break while the lining is bent (common practice).
    private const double LeastKerfStepMm = 4;

    internal static IEnumerable<Finding> Of(BodyPlan plan) =>
        Bends(plan)
            .Concat(LiningsOf(plan))
            .Concat(BackOf(plan))
            .Concat(Rosette(plan))
            .Concat(Dome(plan))
            .Concat(BraceChecks.Of(plan))
            .Concat(BridgeChecks.Of(plan))
            .Concat(NeckChecks.Of(plan));

    private static IEnumerable<Finding> Bends(BodyPlan plan)
    {
        double limit = plan.Guitar.Design.Ribs.BendStrainPercent;
        foreach (RibBend bend in plan.Ribs.Bends)
        {
            if (bend.StrainPercent > limit)
            {
                RibPoint at = plan.Ribs.Points.MinBy(point =>
                    Math.Abs(point.AlongMm - bend.TightestAtMm)
                );
                yield return BodyRules.RibStrain.Broken(
                    bend.StrainPercent,
                    limit,
                    "ribs.thickness",
                    new Place(plan.Guitar.JoinMm + at.UMm, at.YMm),
                    bend.TightestMm,
                    bend.ThicknessThatBendsMm
                );
            }
        }
    }

    private static IEnumerable<Finding> LiningsOf(BodyPlan plan)
    {
        RibsDesign ribs = plan.Guitar.Design.Ribs;
        LiningPlan lining = plan.Ribs.Lining;
        if (
            ribs.LiningWidthMm > 0
            && ribs.Lining == LiningKind.Solid
            && lining.StrainPercent > ribs.BendStrainPercent
        )
        {
            yield return BodyRules.LiningStrain.Broken(
                lining.StrainPercent,
                ribs.BendStrainPercent,
                "ribs.lining",
                null,
                lining.TightestMm
            );
        }

        if (ribs.LiningWidthMm > 0 && ribs.Lining != LiningKind.Solid)
        {
            if (ribs.KerfWebMm >= ribs.LiningWidthMm)
            {
                yield return BodyRules.KerfThrough.Broken(
                    ribs.KerfWebMm,
                    ribs.LiningWidthMm,
                    "ribs.kerf_web"
                );
            }
            else if (lining.KerfStepMm < LeastKerfStepMm)
            {
                yield return BodyRules.KerfsClose.Broken(
                    lining.KerfStepMm,
                    LeastKerfStepMm,
                    "ribs.kerf"
                );
            }
        }

        double need = 2 * ribs.LiningHeightMm;
        if (plan.Ribs.LeastHeightMm < need + 5)
        {
            yield return BodyRules.RibTooLow.Broken(
                plan.Ribs.LeastHeightMm,
                need + 5,
                "back.depth_heel"
            );
        }
    }

    private static IEnumerable<Finding> BackOf(BodyPlan plan)
    {
        InstrumentDesign design = plan.Guitar.Design;
        double body = plan.Guitar.Outline.BodyLengthMm;
        for (int i = 0; i < design.Back.Bars.Count; i++)
        {
            BackBarDesign bar = design.Back.Bars[i];
            Place place = new(plan.Guitar.JoinMm + bar.AtMm, 0);
            if (bar.AtMm >= body)
            {
                yield return BodyRules.BackBarOutside.Broken(
                    bar.AtMm,
                    body,
                    $"back.bars[{i}].at",
                    place
                );
            }
        }

        foreach ((BackBar bar, int i) in plan.Back.Bars.Select((bar, i) => (bar, i)))
        {
            double room = plan.Back.Depth.HeightAt(new Point(bar.AtMm, bar.HalfMm)) / 2;
            if (bar.HeightMm > room)
            {
                yield return BodyRules.BackBarTooHigh.Broken(
                    bar.HeightMm,
                    room,
                    $"back.bars[{i}].height",
                    new Place(plan.Guitar.JoinMm + bar.AtMm, 0)
                );
            }
        }
    }

    private static IEnumerable<Finding> Rosette(BodyPlan plan)
    {
        InstrumentDesign design = plan.Guitar.Design;
        SoundholeDesign hole = design.Soundhole;
        Place place = new(plan.Guitar.JoinMm + hole.AtMm, 0);
        double room = plan.Guitar.Outline.Half.Nearest(new Point(hole.AtMm, 0)).DistanceMm;
        for (int i = 0; i < design.Rosette.Rings.Count; i++)
        {
            RosetteRingDesign ring = design.Rosette.Rings[i];
            if (ring.DepthMm >= design.Soundboard.ThicknessMm)
            {
                yield return BodyRules.RosetteTooDeep.Broken(
                    ring.DepthMm,
                    design.Soundboard.ThicknessMm,
                    $"rosette.rings[{i}].depth",
                    place
                );
            }

            if (ring.InnerMm < hole.RadiusMm)
            {
                yield return BodyRules.RosetteAtHole.Broken(
                    ring.InnerMm,
                    hole.RadiusMm,
                    $"rosette.rings[{i}].inner",
                    place
                );
            }

            if (ring.OuterMm > room - design.Ribs.ThicknessMm)
            {
                yield return BodyRules.RosetteOutside.Broken(
                    ring.OuterMm,
                    room - design.Ribs.ThicknessMm,
                    $"rosette.rings[{i}].outer",
                    place
                );
            }
        }
    }

    // A blend that reaches the dish's middle leaves less than the height that was asked for.
    private static IEnumerable<Finding> Dome(BodyPlan plan)
    {
        DomeDesign dome = plan.Guitar.Design.Dome;
        double high = plan.Guitar.Dome.Field.Peak.HeightMm;
        if (dome.Kind == DomeKind.Dish && high < dome.HeightMm - 0.05)
        {
            yield return BodyRules.DishBlend.Broken(
                high,
                dome.HeightMm,
                "dome.blend",
                new Place(plan.Guitar.JoinMm + plan.Guitar.Dome.Field.Peak.Place.X, 0)
            );
        }
    }
}
