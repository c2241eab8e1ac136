using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>An overlay and the packing under the neck at full size, as they lie on the board, face up.</summary>
internal static class OverlaySheet
{
    private const double ColumnMm = 190;

    public static NamedSheet Of(Guitar guitar, WorkboardPlan plan)
    {
        Part[] flat = [.. plan.Parts.Where(part => part.Id is "overlay" or "packing")];
        View view = new([.. flat.SelectMany(Items), .. Marks(guitar)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
        };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, "sheet.overlay"),
            view,
            PartTable(plan),
            new Notes(
                SheetsWords.Of["overlay.how"],
                [
                    SheetsWords.Of["overlay.how-1"],
                    SheetsWords.Of.Format("overlay.how-2", plan.RampMm, guitar.JoinMm),
                    SheetsWords.Of["overlay.how-3"],
                    SheetsWords.Of.Format("overlay.how-4", plan.Relief.ClearanceMm),
                ],
                ColumnMm
            )
            {
                Numbered = true,
                Style = TextStyle.Body.Larger,
            },
            new Cautions(
                [SheetsWords.Of["caution.router"], SheetsWords.Of["caution.dust"]],
                ColumnMm
            )
        );
        return new NamedSheet("overlay", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Part part) => PartItems.Of(part, withWords: false);

    private static IEnumerable<Item> Marks(Guitar guitar)
    {
        double join = guitar.JoinMm;
        double half = guitar.Design.Workboard.NeckWidthMm / 2;
        double bout = guitar.Design.Outline.LowerBout.WidthMm / 2;
        yield return new Line(
            Shape.Of(guitar.Outline.Closed.Moved(new Vector(join, 0)).ToBeziers(0.01)),
            LineStyle.Hidden
        );
        foreach (HarmonicBarDesign bar in guitar.Design.HarmonicBars)
        {
            double inside = (guitar.Outline.WidthAt(bar.AtMm) / 2) - guitar.Design.Ribs.ThicknessMm;
            double w = bar.WidthMm / 2;
            yield return new Line(
                Shape.Rectangle(Box.Of(join + bar.AtMm - w, -inside, join + bar.AtMm + w, inside)),
                LineStyle.Hidden
            );
        }

        yield return new BassTreble(
            ViewFrame.Workboard,
            join + guitar.Design.Outline.UpperBout.AtMm,
            bout * 0.45
        );
        double edge = bout + guitar.Design.Workboard.MarginMm;
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                new Station(
                    new Point(-guitar.Design.Workboard.BeyondNutMm, -half),
                    SheetsWords.Of["station.board-end"]
                ),
                new Station(new Point(0, -half), SheetsWords.Of["station.nut"]),
                new Station(new Point(join, -half), SheetsWords.Of["station.join"]),
                .. guitar.Design.HarmonicBars.Select(bar => new Station(
                    new Point(join + bar.AtMm, -half),
                    SheetsWords.Of["station.bar"]
                )),
                new Station(
                    new Point(join + guitar.Dome.StartUMm, -half),
                    SheetsWords.Of["station.belly"]
                ),
                new Station(new Point(guitar.TailMm, 0), SheetsWords.Of["station.tail"]),
            ],
            Side.Left,
            edge - half + 14
        );
    }

    private static Table PartTable(WorkboardPlan plan) =>
        new(
            SheetsWords.Of["overlay.parts"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.of"]),
                new Column(SheetsWords.Of["column.mm"], Align.Right, 14),
            ],
            [
                .. plan.Parts.Select(part =>
                    (IReadOnlyList<string>)
                        [part.Name, JigsWords.Of[part.Material], Figures.Mm(part.ThicknessMm)]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
        };
}
