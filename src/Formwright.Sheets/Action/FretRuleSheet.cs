using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Strings;

namespace Formwright.Sheets.Action;

/// <summary>Fingerboard and fret-slot rule at full size, every fret with its distance from the nut.</summary>
internal static class FretRuleSheet
{
    private const double LabelMm = 5;
    private const double ColumnMm = 118;

    public static NamedSheet Of(Guitar guitar, NeckAndAction action)
    {
        View view = new([.. Items(guitar, action)], ViewFrame.Front)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["fret-rule.view"],
        };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, "sheet.fret-rule"),
            view,
            Table(action),
            new Notes("", [SheetsWords.Of["fret-rule.how"]], ColumnMm),
            Care.WithDust(ColumnMm)
        );
        return new NamedSheet("fret-rule", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Guitar guitar, NeckAndAction action)
    {
        double end = FretTable.EndMm(guitar.Design, action.Model);
        double atNut = FretTable.WidthAt(guitar.Design, 0) / 2;
        double atEnd = FretTable.WidthAt(guitar.Design, end) / 2;
        yield return new Line(
            Shape.Polyline(
                [
                    new Point(0, -atNut),
                    new Point(0, atNut),
                    new Point(end, atEnd),
                    new Point(end, -atEnd),
                ],
                closed: true
            ),
            LineStyle.Outline
        );
        yield return new Line(new Point(-10, 0), new Point(end + 10, 0), LineStyle.Centreline);
        double scale = guitar.Design.Identity.ScaleMm;
        foreach (InstrumentString each in action.Strings.Strings)
        {
            yield return new Line(
                new Point(0, each.NutYMm),
                new Point(end, each.YAt(end / scale)),
                LineStyle.Hair
            );
        }

        int join = guitar.Design.Identity.JoinFret;
        foreach (FretRow row in action.Frets)
        {
            double half = row.BoardWidthMm / 2;
            double x = row.FromNutMm;
            if (row.Fret > 0)
            {
                yield return new Line(
                    new Point(x, -half),
                    new Point(x, half),
                    row.Fret == join ? LineStyle.Outline : LineStyle.Detail
                );
                yield return new Line(
                    new Point(x, half),
                    new Point(x, half + LabelMm - 1),
                    LineStyle.Witness
                );
            }

            string name =
                row.Fret == 0 ? SheetsWords.Of["station.nut"]
                : row.Fret == join ? SheetsWords.Of.Format("fret-rule.join", row.Fret)
                : Figures.Mm(row.Fret, 0);
            yield return new Label(Figures.Fixed(x, 2), new Point(x, half + LabelMm))
            {
                Rise = Rise.Middle,
                Style = TextStyle.Figure,
            };
            yield return new Label(name, new Point(x, -half - LabelMm + 1))
            {
                Align = Align.Right,
                Rise = Rise.Middle,
                Style = row.Fret == join ? TextStyle.Strong.Larger : TextStyle.Body.Larger,
            };
        }

        yield return new BassTreble(ViewFrame.Front, 18, atNut + 20);
        yield return new LinearDimension(new Point(0, -atNut), new Point(0, atNut), Side.Above, 8);
        double atJoin = FretTable.WidthAt(guitar.Design, guitar.JoinMm) / 2;
        yield return new LinearDimension(
            new Point(end, -atEnd),
            new Point(end, atEnd),
            Side.Below,
            8
        );
        yield return new LinearDimension(
            new Point(guitar.JoinMm - 6, -atJoin),
            new Point(guitar.JoinMm - 6, atJoin),
            Side.Above,
            0
        )
        {
            Share = 0.32,
            Style = TextStyle.SmallFigure,
        };
    }

    private static Table Table(NeckAndAction action) =>
        new(
            SheetsWords.Of["fret-rule.table"],
            [
                new Column(SheetsWords.Of["column.fret"]),
                new Column(SheetsWords.Of["column.from-nut"], Align.Right, 24) { Strong = true },
                new Column(SheetsWords.Of["column.from-last"], Align.Right, 24),
                new Column(SheetsWords.Of["column.width"], Align.Right, 18),
                new Column(SheetsWords.Of["column.thickness"], Align.Right, 20),
            ],
            [
                .. action.Frets.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            row.Fret == 0 ? SheetsWords.Of["station.nut"] : Figures.Mm(row.Fret, 0),
                            Figures.Fixed(row.FromNutMm, 2),
                            row.Fret == 0 ? "" : Figures.Fixed(row.FromLastMm, 2),
                            Figures.Fixed(row.BoardWidthMm, 1),
                            Figures.Fixed(row.BoardMm, 2),
                        ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
        };
}
