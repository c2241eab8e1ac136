using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[stock.sheet]]</c>: a sheet or a board, its grain along its length.</summary>
/// <param name="Material">What it is.</param>
/// <param name="ThicknessMm">Nominal thickness, mm.</param>
/// <param name="LengthMm">Length, along the grain, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HasGrain">Whether it has a grain that parts are laid along.</param>
/// <param name="Count">How many there are; 0 for as many as are needed.</param>
/// <param name="Price">Price of one; null where it is not known.</param>
public sealed record StockSheetDesign(
    StockMaterial Material,
    double ThicknessMm,
    double LengthMm,
    double WidthMm,
    bool HasGrain,
    int Count,
    double? Price
)
{
    /// <summary>It comes from the built-in list, and so does its invented price.</summary>
    public bool IsBuiltIn { get; init; }

    internal static StockSheetDesign Read(TableReader table) =>
        new(
            table.Choice("material", StockMaterial.Plywood),
            table.Length("thickness", null, 0.3, 200),
            table.Length("length", null, 50, 6000),
            table.Length("width", null, 20, 4000),
            table.Flag("grain", true),
            table.Whole("count", 0, 0, 200),
            table.OptionalNumber("price", 0, 1_000_000, "")
        );
}
