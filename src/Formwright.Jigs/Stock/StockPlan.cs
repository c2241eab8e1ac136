using Formwright.Findings;

namespace Formwright.Jigs.Stock;

/// <summary>What the tooling is cut from: sheets with their parts, the cut list, hardware, cost.</summary>
/// <param name="Sheets">Sheets and boards in use.</param>
/// <param name="CutList">Every part.</param>
/// <param name="Hardware">What is bought ready made.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Currency">What the prices are in.</param>
/// <param name="LeastSheets">No nest takes fewer sheets: for each kind the area of its parts over what a sheet offers inside its margin, made up to whole sheets.</param>
/// <param name="Findings">Parts that found no place.</param>
public sealed record StockPlan(
    IReadOnlyList<SheetNest> Sheets,
    IReadOnlyList<CutListRow> CutList,
    IReadOnlyList<HardwareRow> Hardware,
    StockCost Cost,
    string Currency,
    int LeastSheets,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Share of all sheets that the parts take; never above 1.</summary>
    public double UsedFraction =>
        Sheets.Count == 0
            ? 0
            : Sheets.Sum(sheet => sheet.PartsAreaMm2)
                / Sheets.Sum(sheet => sheet.Stock.LengthMm * sheet.Stock.WidthMm);

    /// <summary>Share of what is taken of the sheets that the parts take; never above 1.</summary>
    public double CutFraction =>
        Sheets.Count == 0
            ? 0
            : Sheets.Sum(sheet => sheet.PartsAreaMm2)
                / Sheets.Sum(sheet => sheet.UsedLengthMm * sheet.Stock.WidthMm);
}
