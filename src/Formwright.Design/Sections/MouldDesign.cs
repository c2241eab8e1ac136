using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[mould]</c>: two halves of glued layers around the outline.</summary>
/// <param name="WallMm">Width of the wall outside the outline, mm.</param>
/// <param name="LayersMm">Thickness of each layer from the board up, mm, as measured (nominal is not actual).</param>
/// <param name="HeelCutMm">Half width cut away at the heel, from the centreline, mm.</param>
/// <param name="TailCutMm">Half width cut away at the tail, mm.</param>
/// <param name="Rebate">The step for the soundboard's edge.</param>
/// <param name="Fasteners">Dowels, bolts and captive nuts.</param>
public sealed record MouldDesign(
    double WallMm,
    IReadOnlyList<double> LayersMm,
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
            table.Length("heel_cut", 40, 0, 200),
            table.Length("tail_cut", 30, 0, 200),
            RebateDesign.Read(table.Table("rebate")),
            FastenersDesign.Read(table.Table("fasteners"))
        );
}
