using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[mould]</c>: two halves of glued layers around the outline.</summary>
/// <param name="WallMm">Width of the wall outside the outline, mm.</param>
/// <param name="LayersMm">Thickness of each layer from the board up, mm.</param>
/// <param name="LayersAreMeasured">Whether the thicknesses were measured; a nominal one may be off by what EN 315 allows.</param>
/// <param name="JointsMm">Stations from the heel at which layers are joined from two pieces, one for each layer in turn, mm; 0 for a layer of one piece.</param>
/// <param name="RoughMm">Wood left outside the line when a layer is roughed out, mm.</param>
/// <param name="CutterDiameterMm">Diameter of the bearing cutter that follows the template, mm.</param>
/// <param name="HeelCutMm">Half width cut away at the heel, from the centreline, mm.</param>
/// <param name="TailCutMm">Half width cut away at the tail, mm.</param>
/// <param name="Rebate">The step for the soundboard's edge.</param>
/// <param name="Fasteners">Dowels, bolts and captive nuts.</param>
public sealed record MouldDesign(
    double WallMm,
    IReadOnlyList<double> LayersMm,
    bool LayersAreMeasured,
    IReadOnlyList<double> JointsMm,
    double RoughMm,
    double CutterDiameterMm,
    double HeelCutMm,
    double TailCutMm,
    RebateDesign Rebate,
    FastenersDesign Fasteners
)
{
    internal static MouldDesign Read(TableReader table) =>
        new(
            table.Length("wall", 50, 15, 150),
            table.Lengths("layers", [18, 18, 18], 3, 60),
            table.Flag("layers_measured", false),
            table.Lengths("joints", [], 0, 1000),
            table.Length("rough", 2, 0, 20),
            table.Length("cutter_diameter", 19, 3, 80),
            table.Length("heel_cut", 40, 0, 200),
            table.Length("tail_cut", 30, 0, 200),
            RebateDesign.Read(table.Table("rebate")),
            FastenersDesign.Read(table.Table("fasteners"))
        );
}
