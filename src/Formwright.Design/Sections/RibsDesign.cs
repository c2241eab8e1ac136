using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[ribs]</c>: the sides and the linings glued to them.</summary>
/// <param name="ThicknessMm">Thickness of the ribs, mm.</param>
/// <param name="LiningWidthMm">Width of the linings, square to the rib, mm.</param>
/// <param name="LiningHeightMm">Height of the linings along the rib, mm.</param>
public sealed record RibsDesign(double ThicknessMm, double LiningWidthMm, double LiningHeightMm)
{
    internal static RibsDesign Read(TableReader table) =>
        new(
            table.Length("thickness", 2, 0.5, 8),
            table.Length("lining_width", 6, 0, 30),
            table.Length("lining_height", 15, 0, 60)
        );
}
