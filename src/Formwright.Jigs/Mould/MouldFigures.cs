using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;

namespace Formwright.Jigs.Mould;

/// <summary>What follows from layers, dowels and outline: stack, bolt, play, cutting.</summary>
internal static class MouldFigures
{
    public static (double LeastMm, double MostMm) Stack(MouldDesign design) =>
        design.LayersAreMeasured
            ? (design.LayersMm.Sum(), design.LayersMm.Sum())
            : (
                design.LayersMm.Sum(SheetThickness.LeastMm),
                design.LayersMm.Sum(SheetThickness.MostMm)
            );

    /// <summary>The bolt for the layers as they stand in the design, and whether it fits whatever the sheets turn out to be.</summary>
    /// <param name="design">The mould.</param>
    /// <param name="boardMm">Board with whatever is packed on it.</param>
    public static MouldBolt Bolt(MouldDesign design, double boardMm)
    {
        FastenersDesign fasteners = design.Fasteners;
        (double thin, double thick) = Stack(design);
        double stack = design.LayersMm.Sum();
        double under = boardMm - fasteners.HeadRecessMm;
        double hold = Math.Min(fasteners.NutLengthMm, fasteners.BoltDiameterMm);
        double grip = under - fasteners.NutLengthMm + hold;
        double? length = BoltTable.LengthMm(grip + stack, under + stack);
        (double diameter, double height) = BoltTable.HeadMm(fasteners.BoltDiameterMm);
        return new MouldBolt(
            grip + stack,
            under + stack,
            length,
            length >= grip + thick && length <= under + thin,
            diameter,
            height
        );
    }

    public static DowelPlay? Play(MouldDesign design, List<Fastener> half, ArcPath inner)
    {
        Fastener[] dowels = [.. half.Where(each => each.Kind == Parts.HoleKind.Dowel)];
        return dowels.Length < 2
            ? null
            : DowelPlay.Of(
                dowels[0].Centre,
                dowels[^1].Centre,
                design.Fasteners.DowelClearanceMm,
                inner.Vertices.Select(vertex => vertex.Position)
            );
    }

    public static MouldCutting Cutting(Guitar guitar)
    {
        MouldDesign design = guitar.Design.Mould;
        OutlineOffsets offsets = new(guitar.Outline, 0, 0.01);
        double from = offsets.ArcLengthAtHeel(0, design.HeelCutMm) ?? 0;
        double to = offsets.ArcLengthAtTail(0, design.TailCutMm) ?? guitar.Outline.HalfPerimeterMm;
        Chain face = to > from ? guitar.Outline.Half.Part(from, to) : guitar.Outline.Half;

        // The body lies to the right of the half: where the outline turns right it is round, and the mould hollow.
        ChainPoint? tightest = face.TightestRight;
        double radius = design.CutterDiameterMm / 2;
        double bearing = design.CutterDiameterMm - (2 * design.Rebate.WidthMm);
        return new MouldCutting(
            design.RoughMm,
            radius,
            tightest?.Curve.RadiusMm ?? double.PositiveInfinity,
            tightest?.Position.X ?? 0,
            bearing >= MouldCutting.LeastBearingMm ? bearing : null
        );
    }
}
