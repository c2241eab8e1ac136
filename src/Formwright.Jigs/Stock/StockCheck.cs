using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Stock.Nesting;

namespace Formwright.Jigs.Stock;

/// <summary>What can be said of the stock without nesting: parts that no listed sheet can hold.</summary>
public static class StockCheck
{
    /// <summary>The findings.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="parts">Every part.</param>
    public static IReadOnlyList<Finding> Of(StockDesign stock, IEnumerable<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(parts);
        List<Finding> findings = [];
        foreach (StockGroup group in StockGroup.Of(stock, [.. parts]))
        {
            if (group.Sheets.Count == 0)
            {
                string names = string.Join(
                    ", ",
                    group.Parts.Select(each => each.Part.Name).Distinct().Take(3)
                );
                findings.Add(
                    StockRules.NoSheet.Broken(
                        group.ThicknessMm,
                        group.ThicknessMm,
                        "stock.sheet",
                        null,
                        JigsWords.Of[group.Material],
                        names
                    )
                );
                continue;
            }

            findings.AddRange(
                group
                    .Parts.Select(each => each.Part)
                    .Distinct()
                    .Select(part => TooLarge(stock, group, part))
                    .OfType<Finding>()
            );
        }

        return findings;
    }

    /// <summary>Whether some material can only be had in as many sheets as were counted.</summary>
    /// <param name="stock">The stock.</param>
    public static bool MayRunShort(StockDesign stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return stock
            .Sheets.GroupBy(sheet => (sheet.Material, sheet.ThicknessMm))
            .Any(kind => kind.All(sheet => sheet.Count > 0));
    }

    // The turn that asks for the shortest sheet of the largest listed width is what would do.
    private static Finding? TooLarge(StockDesign stock, StockGroup group, Part part)
    {
        NestOutline outline = NestOutline.Of(part);
        (double Length, double Width)? least = null;
        foreach (StockSheetDesign sheet in group.Sheets)
        {
            NestPiece piece = StockGroup.PieceOf(sheet, stock);
            foreach (double angle in Angles(outline, sheet))
            {
                Box box = outline.BoxTurned(angle).Grown(outline.ErrorMm);
                if (
                    box.WidthMm <= piece.LengthMm - stock.KerfMm
                    && box.HeightMm <= piece.WidthMm - stock.KerfMm
                )
                {
                    return null;
                }

                if (
                    least is not { } found
                    || box.WidthMm + box.HeightMm < found.Length + found.Width
                )
                {
                    least = (box.WidthMm, box.HeightMm);
                }
            }
        }

        StockSheetDesign largest = group.Sheets.MaxBy(sheet => sheet.LengthMm * sheet.WidthMm)!;
        (double length, double width) = least!.Value;
        return StockRules.PartLargerThanSheet.Broken(
            length,
            largest.LengthMm,
            "stock.sheet",
            null,
            part.Name,
            width,
            largest.WidthMm,
            Math.Ceiling(length + (2 * stock.MarginMm)),
            Math.Ceiling(width + (2 * stock.MarginMm))
        );
    }

    private static IEnumerable<double> Angles(NestOutline outline, StockSheetDesign sheet)
    {
        int turns = outline.KeepsGrain && sheet.HasGrain ? 1 : NestTable.Turns / 2;
        return Enumerable.Range(0, turns).Select(turn => 2 * Math.PI * turn / NestTable.Turns);
    }
}
