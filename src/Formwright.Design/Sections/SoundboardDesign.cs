using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[soundboard]</c>: the board as it goes onto the workboard.</summary>
/// <param name="ThicknessMm">Thickness in the middle, mm.</param>
/// <param name="EdgeThicknessMm">Thickness at the edge, where the rebate holds it down, mm.</param>
/// <param name="EdgeBandMm">Width of the band along the outline over which the middle's thickness runs down to the edge's, mm.</param>
/// <param name="OverhangMm">How far it stands over the outline until it is trimmed, mm.</param>
public sealed record SoundboardDesign(
    double ThicknessMm,
    double EdgeThicknessMm,
    double EdgeBandMm,
    double OverhangMm
)
{
    internal static SoundboardDesign Read(TableReader table) =>
        new(
            table.Length("thickness", 2.5, 0.5, 8),
            table.Length("edge_thickness", 2.5, 0.5, 8),
            table.Length("edge_band", 50, 0, 200),
            table.Length("overhang", 4, 0, 50)
        );
}
