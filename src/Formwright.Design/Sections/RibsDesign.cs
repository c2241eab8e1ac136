using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[ribs]</c>: the sides and the linings glued to them.</summary>
/// <param name="ThicknessMm">Thickness of the ribs, mm.</param>
/// <param name="LiningWidthMm">Width of the linings, square to the rib, mm.</param>
/// <param name="LiningHeightMm">Height of the linings along the rib, mm.</param>
/// <param name="Lining">Solid or kerfed linings.</param>
/// <param name="KerfMm">Width of a lining's saw kerf, mm.</param>
/// <param name="KerfWebMm">Wood that a kerf leaves, mm.</param>
/// <param name="GlueBlockMm">Length of a glue block along the rib, mm.</param>
/// <param name="GlueBlockGapMm">Gap between two, mm.</param>
/// <param name="BendStrainPercent">Stretch of the outer fibre that the wood takes when bent hot, %.</param>
/// <param name="LengthAllowanceMm">Extra length of the blank at each end, mm.</param>
/// <param name="WidthAllowanceMm">Extra width of the blank over the highest place, mm.</param>
/// <param name="TailStripMm">Width of a strip let in at the tail between the ribs, mm; 0 where they meet.</param>
/// <param name="SpringBackPercent">How much tighter than the outline the bending form is, % of the curvature.</param>
public sealed record RibsDesign(
    double ThicknessMm,
    double LiningWidthMm,
    double LiningHeightMm,
    LiningKind Lining,
    double KerfMm,
    double KerfWebMm,
    double GlueBlockMm,
    double GlueBlockGapMm,
    double BendStrainPercent,
    double LengthAllowanceMm,
    double WidthAllowanceMm,
    double TailStripMm,
    double SpringBackPercent
)
{
    internal static RibsDesign Read(TableReader table) =>
        new(
            table.Length("thickness", 2, 0.5, 8),
            table.Length("lining_width", 6, 0, 30),
            table.Length("lining_height", 15, 0, 60),
            table.Choice("lining", LiningKind.Kerfed),
            table.Length("kerf", 0.8, 0.2, 4),
            table.Length("kerf_web", 1.2, 0.2, 10),
            table.Length("glue_block", 14, 3, 60),
            table.Length("glue_block_gap", 1, 0, 60),
            table.Number("bend_strain", 1.5, 0.1, 5, "%"),
            table.Length("length_allowance", 20, 0, 200),
            table.Length("width_allowance", 4, 0, 50),
            table.Length("tail_strip", 0, 0, 60),
            table.Number("spring_back", 5, 0, 50, "%")
        );
}
