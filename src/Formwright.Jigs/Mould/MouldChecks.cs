using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Mould;

/// <summary>Rules about how a mould is cut, bolted and located.</summary>
internal static class MouldChecks
{
    public static IEnumerable<Finding> Of(Guitar guitar, MouldPlan plan, List<Fastener> half)
    {
        MouldDesign design = guitar.Design.Mould;
        if (plan.Cutting is { } cutting && cutting.CutterRadiusMm > cutting.TightestHollowMm)
        {
            yield return MouldRules.CutterTooLarge.Broken(
                cutting.CutterRadiusMm,
                cutting.TightestHollowMm,
                "mould.cutter_diameter",
                new Place(
                    guitar.JoinMm + cutting.TightestAtMm,
                    guitar.Outline.WidthAt(cutting.TightestAtMm) / 2
                )
            );
        }

        if (plan.Bolt is { LengthMm: null } bolt && half.Count > 0)
        {
            yield return MouldRules.NoBoltFits.Broken(
                bolt.LeastMm,
                bolt.MostMm,
                "mould.fasteners.head_recess"
            );
        }

        if (plan.Play is { } play && play.FarEndMm > MouldRules.FarEndMm)
        {
            yield return MouldRules.FarEndMoves.Broken(
                play.FarEndMm,
                MouldRules.FarEndMm,
                "mould.fasteners.dowel_clearance",
                new Place(play.FarEnd.X, -play.FarEnd.Y),
                play.SpacingMm
            );
        }

        foreach (Finding finding in Joints(guitar, half))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Joints(Guitar guitar, List<Fastener> half)
    {
        MouldDesign design = guitar.Design.Mould;
        for (int layer = 0; layer < design.LayersMm.Count; layer++)
        {
            if (JointOf(design, layer) is not { } joint)
            {
                continue;
            }

            double x = guitar.JoinMm + joint;
            foreach (Fastener hole in half)
            {
                double least = MouldRules.EdgeDiameters * hole.DiameterMm;
                double distance = Math.Abs(hole.Centre.X - x);
                bool isThrough = hole.Kind == HoleKind.Bolt || layer < 2;
                if (isThrough && distance < least)
                {
                    yield return MouldRules.HoleOnJoint.Broken(
                        distance,
                        least,
                        "mould.joints",
                        new Place(hole.Centre.X, -hole.Centre.Y),
                        JigsWords.Of[$"hole.{hole.Kind}"],
                        layer + 1
                    );
                }
            }

            if (
                layer > 0
                && JointOf(design, layer - 1) is { } below
                && Math.Abs(joint - below) < design.WallMm
            )
            {
                yield return MouldRules.JointsInLine.Broken(
                    Math.Abs(joint - below),
                    design.WallMm,
                    "mould.joints",
                    null,
                    layer,
                    layer + 1
                );
            }
        }
    }

    /// <summary>Station of a layer's joint from the heel, mm; null for a layer of one piece.</summary>
    public static double? JointOf(MouldDesign design, int layer) =>
        design.JointsMm.Count > 0
        && design.JointsMm[layer % design.JointsMm.Count] is > 0 and var at
            ? at
            : null;
}
