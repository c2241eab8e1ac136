using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[stock.hardware]]</c>: what a dowel, bolt, nut or washer costs.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="DiameterMm">Nominal diameter, mm.</param>
/// <param name="Price">Price of one.</param>
public sealed record StockHardwareDesign(HardwareKind Kind, double DiameterMm, double Price)
{
    /// <summary>It comes from the built-in list, and so does its invented price.</summary>
    public bool IsBuiltIn { get; init; }

    internal static StockHardwareDesign Read(TableReader table) =>
        new(
            table.Choice("kind", HardwareKind.Dowel),
            table.Length("diameter", null, 1, 40),
            table.Number("price", null, 0, 1_000_000, "")
        );
}
