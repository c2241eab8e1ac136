using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>The wood of one part: its species, its cut, and whatever was measured of the very piece.</summary>
/// <param name="Species">Species, for every figure that was not measured.</param>
/// <param name="Cut">How its width lies to the growth rings.</param>
/// <param name="DensityKgPerM3">Measured density, kg/m³, or null for the table's.</param>
/// <param name="ModulusLongGPa">Measured modulus along the grain, GPa, or null.</param>
/// <param name="ModulusCrossGPa">Measured modulus across the grain in the board's plane, GPa, or null.</param>
/// <param name="ModulusShearGPa">Measured shear modulus in the board's plane, GPa, or null.</param>
public sealed record PartWoodDesign(
    Species Species,
    GrainCut Cut,
    double? DensityKgPerM3,
    double? ModulusLongGPa,
    double? ModulusCrossGPa,
    double? ModulusShearGPa
)
{
    internal static PartWoodDesign Read(TableReader table, Species species, GrainCut cut) =>
        new(
            table.Choice("species", species),
            table.Choice("cut", cut),
            table.OptionalNumber("density", 100, 1500, "kg/m³"),
            table.OptionalNumber("modulus_long", 1, 40, "GPa"),
            table.OptionalNumber("modulus_cross", 0.05, 10, "GPa"),
            table.OptionalNumber("modulus_shear", 0.05, 10, "GPa")
        );
}
