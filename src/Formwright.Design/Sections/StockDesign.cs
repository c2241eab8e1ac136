using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[stock]</c>: what the tooling is cut from, and how it is cut.</summary>
/// <param name="KerfMm">Width of the cut: least distance between two parts on a sheet, mm.</param>
/// <param name="MarginMm">Edge of a sheet that is not used, mm.</param>
/// <param name="OffcutMm">Shorter side of the smallest offcut that is kept, mm.</param>
/// <param name="Currency">What the prices are in.</param>
/// <param name="Sheets">Sheets and boards: the file's own, and the built-in ones of other materials and thicknesses.</param>
/// <param name="Hardware">Prices of hardware: the file's own, and the built-in ones of other kinds and diameters.</param>
public sealed record StockDesign(
    double KerfMm,
    double MarginMm,
    double OffcutMm,
    string Currency,
    IReadOnlyList<StockSheetDesign> Sheets,
    IReadOnlyList<StockHardwareDesign> Hardware
)
{
    private const double SameMm = 0.01;

    internal static StockDesign Read(TableReader table)
    {
        StockSheetDesign[] sheets = [.. table.Tables("sheet").Select(StockSheetDesign.Read)];
        StockHardwareDesign[] hardware =
        [
            .. table.Tables("hardware").Select(StockHardwareDesign.Read),
        ];
        return new(
            table.Length("kerf", 3, 0, 20),
            table.Length("margin", 10, 0, 100),
            table.Length("offcut", 100, 20, 1000),
            table.Text("currency", "EUR"),
            [
                .. sheets,
                .. BuiltInStock.Sheets.Where(each =>
                    !sheets.Any(own =>
                        own.Material == each.Material
                        && Math.Abs(own.ThicknessMm - each.ThicknessMm) < SameMm
                    )
                ),
            ],
            [
                .. hardware,
                .. BuiltInStock.Hardware.Where(each =>
                    !hardware.Any(own =>
                        own.Kind == each.Kind && Math.Abs(own.DiameterMm - each.DiameterMm) < SameMm
                    )
                ),
            ]
        );
    }
}
