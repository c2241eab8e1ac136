namespace Formwright.Jigs.Stock;

/// <summary>What stock and hardware cost, so far as prices are known.</summary>
/// <param name="Sheets">Whole sheets and boards.</param>
/// <param name="SheetsUsed">The share of them that is taken; offcuts that are kept are left out.</param>
/// <param name="Hardware">Hardware.</param>
/// <param name="Unpriced">Sheets and kinds of hardware without a price.</param>
/// <param name="HasBuiltInPrices">A price of the built-in list, which is invented, is in it.</param>
public sealed record StockCost(
    double Sheets,
    double SheetsUsed,
    double Hardware,
    int Unpriced,
    bool HasBuiltInPrices
)
{
    /// <summary>Whole sheets and hardware.</summary>
    public double Total => Sheets + Hardware;

    internal static StockCost Of(
        IReadOnlyList<SheetNest> sheets,
        IReadOnlyList<HardwareRow> hardware
    ) =>
        new(
            sheets.Sum(sheet => sheet.Stock.Price ?? 0),
            sheets.Sum(sheet => sheet.PriceOfUsed ?? 0),
            hardware.Sum(row => row.Cost ?? 0),
            sheets.Count(sheet => sheet.Stock.Price is null)
                + hardware.Count(row => row.Price is null),
            sheets.Any(sheet => sheet.Stock is { IsBuiltIn: true, Price: not null })
                || hardware.Any(row => row.IsBuiltInPrice)
        );
}
