using Formwright.Drawing;
using Formwright.Trace;

namespace Formwright.Sheets.Trace;

/// <summary>The bumps of a trace as a table, the worst first.</summary>
internal static class BumpTable
{
    /// <summary>Bumps that are drawn and listed; a trace with more is no outline to sand.</summary>
    internal const int Most = 24;

    internal static Table Of(TraceResult trace, double widthMm) =>
        new(
            SheetsWords.Of["trace.bumps"],
            [
                new Column("", Align.Right, 8) { Strong = true },
                new Column(""),
                new Column(SheetsWords.Of["column.station"], Align.Right, 28),
                new Column(SheetsWords.Of["column.length"], Align.Right, 20),
                new Column(SheetsWords.Of["column.height"], Align.Right, 22),
            ],
            [
                .. trace
                    .Bumps.Take(Most)
                    .Select(
                        (bump, i) =>
                            (IReadOnlyList<string>)
                                [
                                    $"{i + 1}",
                                    What(bump),
                                    Figures.Fixed(bump.UMm, 0),
                                    Figures.Fixed(bump.LengthMm, 0),
                                    Figures.Fixed(bump.HeightMm, 2),
                                ]
                    ),
            ]
        )
        {
            WidthMm = widthMm,
            Style = TextStyle.Body.Larger,
        };

    /// <summary>Treble, proud.</summary>
    internal static string What(Bump bump) =>
        $"{SheetsWords.Of[bump.Side == TraceSide.Bass ? "bump.bass" : "bump.treble"]}, {SheetsWords.Of[bump.IsProud ? "bump.proud" : "bump.hollow"]}";
}
