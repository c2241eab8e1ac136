using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;

namespace Formwright.Sheets.Tooling;

/// <summary>Both halves of the mould on the board, with the drill table.</summary>
internal static class MouldSheet
{
    private const double ColumnMm = 190;

    public static NamedSheet Of(Guitar guitar, MouldPlan plan)
    {
        View view = new([.. Items(guitar, plan)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["mould.view"],
        };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, "sheet.mould"),
            view,
            DrillTable(plan),
            Layers(plan),
            new Notes(
                SheetsWords.Of["mould.how"],
                [
                    SheetsWords.Of.Format(
                        "mould.how-1",
                        guitar.Design.Mould.Rebate.WidthMm,
                        guitar.Design.Mould.Rebate.DepthMm,
                        guitar.Design.Soundboard.EdgeThicknessMm
                    ),
                    SheetsWords.Of["mould.how-2"],
                    SheetsWords.Of["mould.how-3"],
                ],
                ColumnMm
            )
            {
                Numbered = true,
            },
            new Cautions(
                [SheetsWords.Of["caution.router"], SheetsWords.Of["caution.dust"]],
                ColumnMm
            )
        );
        return new NamedSheet("mould", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Guitar guitar, MouldPlan plan)
    {
        double tail = guitar.TailMm;
        yield return new Line(
            new Point(guitar.JoinMm - 60, 0),
            new Point(tail + 60, 0),
            LineStyle.Centreline
        );
        foreach (
            Part part in plan
                .Parts.Where(part => part.Pockets.Count > 0)
                .DefaultIfEmpty(plan.Parts[0])
        )
        {
            foreach (Item item in PartItems.Of(part))
            {
                yield return item;
            }
        }

        for (int i = 0; i < plan.Fasteners.Count; i++)
        {
            Fastener fastener = plan.Fasteners[i];
            double side = Math.Sign(fastener.Centre.Y);
            yield return new Balloon($"{i + 1}", fastener.Centre, new Vector(side * 9, 7));
        }

        double upper = guitar.JoinMm + guitar.Design.Outline.UpperBout.AtMm;
        yield return new BassTreble(
            ViewFrame.Workboard,
            upper,
            guitar.Design.Outline.UpperBout.WidthMm * 0.3
        );
        double heel = guitar.Design.Mould.HeelCutMm;
        yield return new LinearDimension(
            new Point(guitar.JoinMm - 20, -heel),
            new Point(guitar.JoinMm - 20, heel),
            Drawing.Side.Above,
            12
        );
        double cut = guitar.Design.Mould.TailCutMm;
        yield return new LinearDimension(
            new Point(tail + 20, -cut),
            new Point(tail + 20, cut),
            Drawing.Side.Below,
            12
        );
    }

    private static Table DrillTable(MouldPlan plan) =>
        new(
            SheetsWords.Of["mould.holes"],
            [
                new Column("", Align.Right, 8),
                new Column(SheetsWords.Of["column.for"]),
                new Column(SheetsWords.Of["column.from-nut"], Align.Right, 26),
                new Column(SheetsWords.Of["column.from-centreline"], Align.Right, 42),
                new Column("Ø", Align.Right, 14),
                new Column(SheetsWords.Of["column.edge"], Align.Right, 24),
            ],
            [
                .. plan.Fasteners.Select(
                    (fastener, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{i + 1}",
                                JigsWords.Of[$"hole.{fastener.Kind}"],
                                Figures.Fixed(fastener.Centre.X, 2),
                                $"{Figures.Fixed(Math.Abs(fastener.Centre.Y), 2)} {SheetsWords.Of[fastener.Centre.Y > 0 ? "side.bass" : "side.treble"]}",
                                Figures.Mm(fastener.DiameterMm, 2),
                                Figures.Fixed(fastener.EdgeDistanceMm, 1),
                            ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
        };

    private static Table Layers(MouldPlan plan) =>
        new(
            SheetsWords.Of["mould.stack"],
            [new Column(""), new Column(SheetsWords.Of["column.mm"], Align.Right, 24)],
            [
                .. plan.LayersMm.Select(
                    (layer, i) =>
                        (IReadOnlyList<string>)
                            [SheetsWords.Of.Format("mould.layer", i + 1), Figures.Mm(layer)]
                ),
                [SheetsWords.Of["mould.height"], Figures.Mm(plan.HeightMm)],
                [SheetsWords.Of["mould.bolt-length"], Figures.Mm(plan.BoltLengthMm)],
                [SheetsWords.Of["mould.dowel-length"], Figures.Mm(plan.DowelLengthMm)],
            ]
        )
        {
            WidthMm = ColumnMm,
        };
}
