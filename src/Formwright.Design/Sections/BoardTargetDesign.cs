using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[board_target]</c>: what the soundboard is thinned to; where absent, what the species' average board has at the design's thickness.</summary>
/// <param name="StiffnessLongNm">Bending stiffness along the grain, N·m.</param>
/// <param name="StiffnessCrossNm">Bending stiffness across the grain, N·m.</param>
/// <param name="MassG">Mass of the soundboard without bars and braces, g.</param>
public sealed record BoardTargetDesign(
    double? StiffnessLongNm,
    double? StiffnessCrossNm,
    double? MassG
)
{
    internal static BoardTargetDesign Read(TableReader table) =>
        new(
            table.OptionalNumber("stiffness_long", 0.5, 200, "N·m"),
            table.OptionalNumber("stiffness_cross", 0.05, 50, "N·m"),
            table.OptionalNumber("mass", 10, 1000, "g")
        );
}
