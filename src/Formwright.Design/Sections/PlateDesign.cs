using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[plate]</c>: how the soundboard is computed as a plate.</summary>
/// <param name="Rim">How ribs and linings hold its edge.</param>
/// <param name="WithDome">Whether the dome stiffens it.</param>
/// <param name="WoodPercent">How far the stiffness of wood that was not measured may be off, %.</param>
/// <param name="Unknowns">Fineness: number of unknowns.</param>
public sealed record PlateDesign(PlateRim Rim, bool WithDome, double WoodPercent, int Unknowns)
{
    internal static PlateDesign Read(TableReader table) =>
        new(
            table.Choice("rim", PlateRim.Between),
            table.Flag("dome", false),
            table.Number("wood", 20, 0, 90, "%"),
            table.Whole("unknowns", 3000, 1000, 20_000)
        );
}
