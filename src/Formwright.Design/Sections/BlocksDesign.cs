using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[blocks]</c>: heel block (of a doweled neck) and tail block; their faces follow the inside of the ribs.</summary>
/// <param name="TailWidthMm">Width of the tail block across, mm.</param>
/// <param name="TailThicknessMm">Thickness of the tail block along the centreline, mm.</param>
/// <param name="HeelWidthMm">Width of the heel block across, mm.</param>
/// <param name="HeelThicknessMm">Thickness of the heel block along the centreline, mm.</param>
public sealed record BlocksDesign(
    double TailWidthMm,
    double TailThicknessMm,
    double HeelWidthMm,
    double HeelThicknessMm
)
{
    internal static BlocksDesign Read(TableReader table) =>
        new(
            table.Length("tail_width", 70, 10, 200),
            table.Length("tail_thickness", 16, 4, 80),
            table.Length("heel_width", 72, 10, 200),
            table.Length("heel_thickness", 40, 4, 150)
        );
}
