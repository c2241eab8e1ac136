using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[mould.rebate]</c>: the step that holds the soundboard down by its edge and takes its overhang.</summary>
/// <param name="WidthMm">Width from the inner face, mm.</param>
/// <param name="DepthMm">Depth from the face that meets the board, mm.</param>
public sealed record RebateDesign(double WidthMm, double DepthMm)
{
    internal static RebateDesign Read(TableReader table) =>
        new(table.Length("width", 8, 0, 100), table.Length("depth", 2.5, 0, 20));
}
