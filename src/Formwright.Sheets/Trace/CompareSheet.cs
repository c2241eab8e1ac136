using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Trace.Comparing;

namespace Formwright.Sheets.Trace;

/// <summary>Two outlines over each other at full size, heels and centrelines on each other, with their widths.</summary>
internal static class CompareSheet
{
    private const double ColumnMm = 170;

    internal static NamedSheet Of(
        string first,
        Curves.Outline outline,
        string second,
        Curves.Outline other,
        OutlineComparison comparison
    )
    {
        double length = Math.Max(outline.BodyLengthMm, other.BodyLengthMm);
        View view = new(
            [
                new Line(new Point(-14, 0), new Point(length + 14, 0), LineStyle.Centreline),
                new Line(TraceSheets.Closed(outline), LineStyle.Outline),
                new Line(TraceSheets.Closed(other), LineStyle.Hidden),
            ],
            ViewFrame.Front
        )
        {
            RotationRad = View.NeckUp,
        };
        Sheet sheet = Composing.WithColumn(
            TraceSheets.Title($"{first}, {second}", "sheet.compare"),
            view,
            Summary(comparison),
            Widths(first, second, comparison),
            new Notes(
                "",
                [
                    SheetsWords.Of.Format("compare.lines", first, second),
                    SheetsWords.Of["compare.character-note"],
                ],
                ColumnMm
            )
            {
                Style = TextStyle.Body.Larger,
            }
        );
        return new NamedSheet("compare", sheet, IsTiled: true);
    }

    private static Table Summary(OutlineComparison comparison) =>
        new(
            SheetsWords.Of["compare.heading"],
            [new Column(""), new Column("", Align.Right, 60)],
            [
                [
                    SheetsWords.Of["compare.largest"],
                    SheetsWords.Of.Format(
                        "compare.largest-figure",
                        comparison.LargestMm,
                        comparison.LargestAtUMm
                    ),
                ],
                [SheetsWords.Of["compare.rms"], $"{Figures.Fixed(comparison.RmsMm, 2)} mm"],
                [
                    SheetsWords.Of["compare.area"],
                    SheetsWords.Of.Format(
                        "compare.area-figure",
                        comparison.AreaMm2 / 100,
                        comparison.OtherAreaMm2 / 100
                    ),
                ],
                [
                    SheetsWords.Of["compare.character"],
                    SheetsWords.Of.Format(
                        "compare.character-figure",
                        100 * comparison.Change.RmsShare
                    ),
                ],
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static Table Widths(string first, string second, OutlineComparison comparison) =>
        new(
            SheetsWords.Of["compare.widths"],
            [
                new Column(SheetsWords.Of["column.station"], Align.Right, 34),
                new Column(Short(first), Align.Right, 40),
                new Column(Short(second), Align.Right, 40),
                new Column(SheetsWords.Of["column.difference"], Align.Right, 34),
            ],
            [
                .. comparison.Widths.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            Figures.Mm(row.UMm),
                            Figures.Fixed(row.WidthMm, 1),
                            Figures.Fixed(row.OtherWidthMm, 1),
                            Figures.Fixed(row.DifferenceMm, 1),
                        ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static string Short(string name) => name.Length > 14 ? name[..13] + "…" : name;
}
