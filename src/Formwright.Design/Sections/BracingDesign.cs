using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[bracing]</c>: the layout that the fan starts from, and the usual sizes.</summary>
/// <param name="Layout">Layout to start from.</param>
/// <param name="WidthMm">Width of a fan brace, mm.</param>
/// <param name="HeightMm">Its height, mm.</param>
/// <param name="EndHeightMm">Height at its ends, mm.</param>
/// <param name="ScoopMm">Length over which each end runs down, mm.</param>
/// <param name="Section">Section of fan braces.</param>
/// <param name="BarEndHeightMm">Height of harmonic and back bars at their ends, mm.</param>
/// <param name="BarScoopMm">Length over which their ends run down, mm.</param>
/// <param name="FromBarMm">Gap between the lower harmonic bar and the fan, mm.</param>
/// <param name="FromRimMm">Gap between the fan's ends and the linings, mm.</param>
public sealed record BracingDesign(
    BraceLayout Layout,
    double WidthMm,
    double HeightMm,
    double EndHeightMm,
    double ScoopMm,
    BraceSection Section,
    double BarEndHeightMm,
    double BarScoopMm,
    double FromBarMm,
    double FromRimMm
)
{
    internal static BracingDesign Read(TableReader table) =>
        new(
            table.Choice("layout", BraceLayout.FanSeven),
            table.Length("width", 5.5, 1, 30),
            table.Length("height", 4.5, 0.5, 30),
            table.Length("end_height", 1, 0, 30),
            table.Length("scoop", 35, 0, 300),
            table.Choice("section", BraceSection.Round),
            table.Length("bar_end_height", 6, 0, 60),
            table.Length("bar_scoop", 45, 0, 300),
            table.Length("from_bar", 8, 0, 100),
            table.Length("from_rim", 12, 0, 150)
        );
}
