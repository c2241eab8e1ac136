using System.ComponentModel;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>What the tooling is cut from.</summary>
public sealed record StockReport(
    [property: Description("What the prices are in.")] string Currency,
    [property: Description("Sheets and boards in use.")] int SheetCount,
    [property: Description("No nest takes fewer: area of the parts over what a sheet offers.")]
        int LeastSheetCount,
    [property: Description("Share of all sheets that the parts take.")] double UsedFraction,
    [property: Description("Share of what is taken of the sheets that the parts take.")]
        double CutFraction,
    [property: Description("Price of whole sheets and boards.")] double SheetsPrice,
    [property: Description("Price of the share of them that is taken.")] double SheetsUsedPrice,
    [property: Description("Price of the hardware.")] double HardwarePrice,
    [property: Description("Price of whole sheets and hardware.")] double TotalPrice,
    [property: Description("Sheets and kinds of hardware whose price is not known.")] int Unpriced,
    [property: Description("Whether an invented price of the built-in list is in it.")]
        bool HasBuiltInPrices,
    [property: Description("Each sheet with its parts.")] IReadOnlyList<NestReport> Sheets,
    [property: Description("Every part that is cut.")] IReadOnlyList<CutListReport> CutList,
    [property: Description("What is bought ready made.")] IReadOnlyList<HardwareReport> Hardware
)
{
    internal static StockReport Of(StockPlan plan) =>
        new(
            plan.Currency,
            plan.Sheets.Count,
            plan.LeastSheets,
            plan.UsedFraction,
            plan.CutFraction,
            plan.Cost.Sheets,
            plan.Cost.SheetsUsed,
            plan.Cost.Hardware,
            plan.Cost.Total,
            plan.Cost.Unpriced,
            plan.Cost.HasBuiltInPrices,
            [.. plan.Sheets.Select(NestReport.Of)],
            [.. plan.CutList.Select(CutListReport.Of)],
            [.. plan.Hardware.Select(HardwareReport.Of)]
        );
}
