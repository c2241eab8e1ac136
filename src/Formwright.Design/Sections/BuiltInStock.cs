using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>The built-in stock: sizes of common practice with invented prices, read from <c>stock.toml</c>.</summary>
public static class BuiltInStock
{
    private static readonly Lazy<(StockSheetDesign[] Sheets, StockHardwareDesign[] Hardware)> All =
        new(Load);

    /// <summary>Sheets and boards.</summary>
    public static IReadOnlyList<StockSheetDesign> Sheets => All.Value.Sheets;

    /// <summary>Hardware.</summary>
    public static IReadOnlyList<StockHardwareDesign> Hardware => All.Value.Hardware;

    private static (StockSheetDesign[], StockHardwareDesign[]) Load()
    {
        using Stream stream = typeof(BuiltInStock).Assembly.GetManifestResourceStream(
            "Data/stock.toml"
        )!;
        using StreamReader reader = new(stream);
        List<Diagnostic> diagnostics = [];
        TableReader root = TableReader.Of(reader.ReadToEnd(), "stock.toml", diagnostics);
        StockSheetDesign[] sheets =
        [
            .. root.Tables("sheet")
                .Select(StockSheetDesign.Read)
                .Select(sheet => sheet with { IsBuiltIn = true }),
        ];
        StockHardwareDesign[] hardware =
        [
            .. root.Tables("hardware")
                .Select(StockHardwareDesign.Read)
                .Select(each => each with { IsBuiltIn = true }),
        ];
        root.ReportUnknownAndMissing();
        return diagnostics.Count == 0
            ? (sheets, hardware)
            : throw new InvalidDataException(string.Join(Environment.NewLine, diagnostics));
    }
}
