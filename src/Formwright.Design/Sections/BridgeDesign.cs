using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[bridge]</c>: the bridge as a piece of wood. Saddle slot, string spacing and tie holes stand in <c>[saddle]</c> and <c>[strings]</c>.</summary>
/// <param name="LengthMm">Length across the soundboard, wing to wing, mm.</param>
/// <param name="WidthMm">Width along the centreline, mm.</param>
/// <param name="MiddleMm">Length of the part that holds saddle and ties, mm.</param>
/// <param name="HeightMm">Height of that part over the soundboard, mm.</param>
/// <param name="WingMm">Thickness of the wings beside it, mm.</param>
/// <param name="WingTipMm">Thickness at their ends, mm.</param>
/// <param name="TieHoleMm">Diameter of the tie holes, mm.</param>
/// <param name="PatchThicknessMm">Thickness of a patch inside under the bridge, mm; 0 for none.</param>
/// <param name="PatchMarginMm">How far the patch reaches beyond the bridge all round, mm.</param>
public sealed record BridgeDesign(
    double LengthMm,
    double WidthMm,
    double MiddleMm,
    double HeightMm,
    double WingMm,
    double WingTipMm,
    double TieHoleMm,
    double PatchThicknessMm,
    double PatchMarginMm
)
{
    internal static BridgeDesign Read(TableReader table) =>
        new(
            table.Length("length", 188, 60, 400),
            table.Length("width", 28, 10, 80),
            table.Length("middle", 82, 30, 200),
            table.Length("height", 8.5, 3, 25),
            table.Length("wing", 3.6, 0.5, 15),
            table.Length("wing_tip", 2.4, 0.3, 15),
            table.Length("tie_hole", 1.6, 0.5, 5),
            table.Length("patch_thickness", 0, 0, 6),
            table.Length("patch_margin", 6, 0, 60)
        );
}
