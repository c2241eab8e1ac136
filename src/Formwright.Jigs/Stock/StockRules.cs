using Formwright.Findings;

namespace Formwright.Jigs.Stock;

/// <summary>Rules about stock.</summary>
public static class StockRules
{
    public static readonly Rule NoSheet = Make("stock.no-sheet", Severity.Note);
    public static readonly Rule PartLargerThanSheet = Make(
        "stock.part-larger-than-sheet",
        Severity.Warn
    );
    public static readonly Rule NotEnough = new(
        "stock.not-enough",
        Severity.Warn,
        "",
        JigsWords.Of
    );

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
