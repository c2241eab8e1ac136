using Formwright.Design;
using Formwright.Instrument;
using Formwright.Jigs.Brackets;
using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.Steps;

/// <summary>The figures that gates take, each from its one place. All are mm.</summary>
internal sealed class GateFigures(Guitar guitar, Tooling tooling)
{
    private const string Unit = "mm";
    private readonly InstrumentDesign design = guitar.Design;

    public Gate BodyLength =>
        new("body-length", Of("outline.body_length", guitar.Outline.BodyLengthMm));

    public Gate HalfPerimeter =>
        new("half-perimeter", Of("/outline/half_perimeter_mm", guitar.Outline.HalfPerimeterMm));

    public Gate UpperBout =>
        new("upper-bout", Of("outline.upper_bout.width", design.Outline.UpperBout.WidthMm));

    public Gate Waist => new("waist", Of("outline.waist.width", design.Outline.Waist.WidthMm));

    public Gate LowerBout =>
        new("lower-bout", Of("outline.lower_bout.width", design.Outline.LowerBout.WidthMm));

    public Gate Relief =>
        new("relief", Of("/workboard/relief_mm", tooling.Workboard.Relief.DeepestMm));

    public Gate BoardThickness =>
        new("board-thickness", Of("workboard.thickness", design.Workboard.ThicknessMm));

    public Gate RebateDepth =>
        new("rebate-depth", Of("mould.rebate.depth", design.Mould.Rebate.DepthMm));

    public Gate RebateWidth =>
        new("rebate-width", Of("mould.rebate.width", design.Mould.Rebate.WidthMm));

    public Gate EdgeThickness =>
        new("edge-thickness", Of("soundboard.edge_thickness", design.Soundboard.EdgeThicknessMm));

    public Gate Wall => new("wall", Of("mould.wall", design.Mould.WallMm));

    public Gate MouldHeight => new("mould-height", Of("/mould/height_mm", tooling.Mould.HeightMm));

    public Gate BoltLength =>
        new("bolt-length", Of("/mould/bolt_length_mm", tooling.Mould.BoltLengthMm));

    public Gate DowelLength =>
        new("dowel-length", Of("/mould/dowel_length_mm", tooling.Mould.DowelLengthMm));

    public Gate DowelDiameter =>
        new(
            "dowel-diameter",
            Of("mould.fasteners.dowel_diameter", design.Mould.Fasteners.DowelDiameterMm)
        );

    public Gate NutDiameter =>
        new(
            "nut-diameter",
            Of("mould.fasteners.nut_diameter", design.Mould.Fasteners.NutDiameterMm)
        );

    public Gate SpineDepth => new("spine-depth", Of("/spine/depth_mm", tooling.Spine.DepthMm));

    public Gate FootHeight =>
        new("foot-height", Of("/spine/foot_height_mm", tooling.Spine.Feet.HeightMm));

    public Gate TailFoot => new("tail-foot", Of("/spine/tail_foot_mm", tooling.Spine.Feet.TailMm));

    /// <summary>What the straight edge shows at the nut; none where the table has no such row.</summary>
    public IEnumerable<Gate> NutGap => Gaps(row => row.Place == "nut");

    /// <summary>What the straight edge shows at every place where it does not rest.</summary>
    public IEnumerable<Gate> AllGaps => Gaps(row => !row.IsRest);

    public static Gate SlotWidth(JigPlan jig) =>
        new("slot-width", Of("/jig/slot_width_mm", jig.Hardware.HoleMm));

    public static Gate BracketWidth(JigPlan jig) =>
        new("bracket-width", Of("/jig/bracket_width_mm", jig.Shape.WidthMm));

    public static Gate JigBoltLength(JigPlan jig) =>
        new("bolt-length", Of("/jig/bolt_length_mm", jig.Hardware.LengthMm));

    private IEnumerable<Gate> Gaps(Func<GapRow, bool> which)
    {
        IReadOnlyList<GapRow> table = tooling.Workboard.GapTable;
        for (int i = 0; i < table.Count; i++)
        {
            if (which(table[i]))
            {
                yield return new Gate(
                    "gap",
                    Of($"/workboard/gap_table/{i}/gap_mm", table[i].GapMm) with
                    {
                        Tolerance = table[i].ToleranceMm,
                    },
                    [table[i].PlaceName]
                );
            }
        }
    }

    private static GateFigure Of(string reference, double value) =>
        new(reference, value, Unit, null);
}
