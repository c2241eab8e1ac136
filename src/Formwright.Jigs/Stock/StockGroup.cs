using Formwright.Design.Reading;
using Formwright.Design.Sections;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Stock.Nesting;

namespace Formwright.Jigs.Stock;

/// <summary>Parts that are cut from the same kind of stock.</summary>
/// <param name="Material">Key of the material.</param>
/// <param name="ThicknessMm">Nominal thickness of the stock; that of the parts where none is listed.</param>
/// <param name="Sheets">Stock that they can be cut from.</param>
/// <param name="Parts">The parts, one for each piece, with their numbers in the cut list.</param>
internal sealed record StockGroup(
    string Material,
    double ThicknessMm,
    IReadOnlyList<StockSheetDesign> Sheets,
    IReadOnlyList<(int Number, Part Part)> Parts
)
{
    /// <summary>Most that a board is planed down to make a block, mm (common practice: no more is worth it).</summary>
    private const double MostPlanedMm = 25;

    private const double OtherToleranceMm = 0.5;

    /// <summary>What can be used of a sheet.</summary>
    public static NestPiece PieceOf(StockSheetDesign sheet, StockDesign stock) =>
        new(
            Math.Max(0, sheet.LengthMm - (2 * stock.MarginMm) + stock.KerfMm),
            Math.Max(0, sheet.WidthMm - (2 * stock.MarginMm) + stock.KerfMm),
            sheet.HasGrain
        );

    /// <summary>The groups, in the order in which their first parts stand.</summary>
    public static IReadOnlyList<StockGroup> Of(StockDesign stock, IReadOnlyList<Part> parts)
    {
        List<(string Material, double ThicknessMm)> keys = [];
        List<List<(int, Part)>> members = [];
        for (int i = 0; i < parts.Count; i++)
        {
            (string, double) key = (parts[i].Material, ThicknessFor(stock, parts[i]));
            int at = keys.IndexOf(key);
            if (at < 0)
            {
                at = keys.Count;
                keys.Add(key);
                members.Add([]);
            }

            for (int piece = 0; piece < parts[i].Quantity; piece++)
            {
                members[at].Add((i + 1, parts[i]));
            }
        }

        return
        [
            .. keys.Select(
                (key, i) =>
                    new StockGroup(
                        key.Material,
                        key.ThicknessMm,
                        [
                            .. stock.Sheets.Where(sheet =>
                                KeyOf(sheet) == key.Material && sheet.ThicknessMm == key.ThicknessMm
                            ),
                        ],
                        members[i]
                    )
            ),
        ];
    }

    // Nominal thickness nearest to the part's own among those whose tolerance takes it in; for a board that is planed the thinnest that is thick enough.
    private static double ThicknessFor(StockDesign stock, Part part) =>
        stock
            .Sheets.Where(sheet => KeyOf(sheet) == part.Material && Serves(sheet, part.ThicknessMm))
            .OrderBy(sheet => Math.Abs(sheet.ThicknessMm - part.ThicknessMm))
            .Select(sheet => (double?)sheet.ThicknessMm)
            .FirstOrDefault()
        ?? part.ThicknessMm;

    // EN 315:2000, sanded plywood: from -(0.4 + 0.03 t) to +(0.2 + 0.03 t) about the nominal thickness t. Other sheets: half a millimetre, tuned.
    private static bool Serves(StockSheetDesign sheet, double thicknessMm)
    {
        double t = sheet.ThicknessMm;
        double over = thicknessMm - t;
        return sheet.Material switch
        {
            StockMaterial.Plywood => over >= -(0.4 + (0.03 * t)) && over <= 0.2 + (0.03 * t),
            StockMaterial.Block or StockMaterial.Solid => over is <= 0 and >= -MostPlanedMm,
            _ => Math.Abs(over) <= OtherToleranceMm,
        };
    }

    private static string KeyOf(StockSheetDesign sheet) =>
        $"material.{Choices.NameOf(sheet.Material)}";
}
