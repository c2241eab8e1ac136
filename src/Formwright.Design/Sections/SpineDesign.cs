using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[workboard.spine]</c>: the laminated beam under the board, and the air and the load that board and spine must stand.</summary>
/// <param name="Layers">Layers of the spine; 0 for a bare board.</param>
/// <param name="LayerThicknessMm">Thickness of a layer, mm.</param>
/// <param name="WidthMm">The layers' other side, mm: across the board where they lie flat, the depth of the spine where they stand on edge.</param>
/// <param name="Lie">How the layers lie.</param>
/// <param name="Wood">Species of solid layers; null for plywood.</param>
/// <param name="BoardModulusGPa">Modulus of the board along its length, GPa.</param>
/// <param name="ModulusGPa">Modulus of the spine along its length, GPa; null for the species' own, or <see cref="PlywoodGPa"/>.</param>
/// <param name="TopChangePercent">How much damper the air at the board's face is than the shop's when the ramp was trued, % relative humidity.</param>
/// <param name="BottomChangePercent">The same at its underside and around the spine.</param>
/// <param name="LoadN">Load between the feet, and on the tail, that it must stand, N.</param>
public sealed record SpineDesign(
    int Layers,
    double LayerThicknessMm,
    double WidthMm,
    LayersLie Lie,
    Species? Wood,
    double BoardModulusGPa,
    double? ModulusGPa,
    double TopChangePercent,
    double BottomChangePercent,
    double LoadN
)
{
    /// <summary>Modulus of plywood along its length, GPa: our guess, no source obtained.</summary>
    public const double PlywoodGPa = 6;

    private const string Plywood = "plywood";

    internal static SpineDesign Read(TableReader table) =>
        new(
            table.Whole("layers", 4, 0, 20),
            table.Length("layer_thickness", 12, 2, 60),
            table.Length("width", 80, 10, 300),
            table.Choice("lie", LayersLie.Flat),
            SpeciesOf(table.Word("material", Plywood, Materials())),
            table.Number("board_modulus", PlywoodGPa, 0.5, 40, "GPa"),
            table.OptionalNumber("modulus", 0.5, 40, "GPa"),
            table.Number("top_change", 5, -40, 40, "%"),
            table.Number("bottom_change", 0, -40, 40, "%"),
            table.Number("load", 100, 0, 10_000, "N")
        );

    private static string[] Materials() =>
        [Plywood, .. Enum.GetValues<Species>().Select(each => Choices.NameOf(each))];

    private static Species? SpeciesOf(string name) =>
        name == Plywood
            ? null
            : Enum.GetValues<Species>().First(each => Choices.NameOf(each) == name);
}
