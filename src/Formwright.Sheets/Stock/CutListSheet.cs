using System.Globalization;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Stock;

namespace Formwright.Sheets.Stock;

/// <summary>The cut list: every part with its size and its sheet; sheets and hardware with their cost; what is left.</summary>
internal static class CutListSheet
{
    private const double HalfMm = 182;
    private const double GapMm = 13;

    public static NamedSheet Of(Guitar guitar, StockPlan plan)
    {
        TitleBlock title = Titles.Of(guitar, "sheet.cut-list", "document.list");
        Block[] right =
        [
            .. new Block[] { Sheets(plan), Offcuts(plan), Hardware(plan), Cost(plan) }.Where(
                block => block is not Table { Rows.Count: 0 }
            ),
        ];
        Table parts = Parts(plan);
        // What would make the right column the taller one goes under the parts.
        int moved = Enumerable.Range(0, right.Length).MinBy(last => Tallest(last));
        double height = Tallest(moved);
        Sheet sheet = new(title, Paper.Holding(new Size((2 * HalfMm) + GapMm, height)));
        Point corner = new(sheet.Area.LeftMm, sheet.Area.TopMm);
        return new NamedSheet(
            "cut-list",
            sheet
                .Add(Flow.Down(corner, Composing.BlockGapMm, [parts, .. right[^moved..]]))
                .Add(
                    Flow.Down(
                        corner + new Vector(HalfMm + GapMm, 0),
                        Composing.BlockGapMm,
                        right[..^moved]
                    )
                ),
            IsTiled: false
        );

        double Tallest(int last) =>
            Math.Max(Stack([parts, .. right[^last..]]), Stack(right[..^last]));

        static double Stack(Block[] blocks) =>
            blocks.Sum(block => block.Size.HeightMm) + (Composing.BlockGapMm * (blocks.Length - 1));
    }

    private static Table Parts(StockPlan plan) =>
        new(
            SheetsWords.Of["cut-list.parts"],
            [
                new Column(SheetsWords.Of["column.number"], Align.Right, 8) { Strong = true },
                new Column(SheetsWords.Of["column.part"], Align.Left, 58),
                new Column(SheetsWords.Of["column.pieces"], Align.Right, 12),
                new Column(SheetsWords.Of["column.material"], Align.Left, 32),
                new Column(SheetsWords.Of["column.thick"], Align.Right, 12),
                new Column(SheetsWords.Of["column.box"], Align.Right, 24),
                new Column(SheetsWords.Of["column.sheet"], Align.Right, 12),
            ],
            [
                .. plan.CutList.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            $"{row.Number}",
                            row.Part.Name,
                            $"{row.Part.Quantity}",
                            JigsWords.Of[row.Part.Material],
                            Figures.Mm(row.Part.ThicknessMm),
                            $"{Figures.Mm(row.LengthMm, 0)} × {Figures.Mm(row.WidthMm, 0)}",
                            row.Sheets.Count == 0 ? "–" : string.Join(", ", row.Sheets.Distinct()),
                        ]
                ),
            ]
        )
        {
            WidthMm = HalfMm,
        };

    private static Table Sheets(StockPlan plan) =>
        new(
            SheetsWords.Of["cut-list.sheets"],
            [
                new Column(SheetsWords.Of["column.what"], Align.Left, 88),
                new Column(SheetsWords.Of["column.taken"], Align.Right, 24),
                new Column(PriceHead(plan), Align.Right, 28),
                new Column(SheetsWords.Of["column.of-taken"], Align.Right, 24),
            ],
            [
                .. plan.Sheets.Select(nest =>
                    (IReadOnlyList<string>)
                        [
                            NestSheet.NameOf(nest),
                            Figures.Mm(nest.UsedLengthMm, 0),
                            Money(nest.Stock.Price),
                            Money(nest.PriceOfUsed),
                        ]
                ),
            ]
        )
        {
            WidthMm = HalfMm,
        };

    private static Table Offcuts(StockPlan plan) =>
        new(
            SheetsWords.Of["nest.offcuts"],
            [
                new Column(SheetsWords.Of["column.what"], Align.Left, 124),
                new Column(SheetsWords.Of["column.box"], Align.Right, 40),
            ],
            [
                .. plan.Sheets.SelectMany(nest =>
                    nest.Offcuts.Select(offcut =>
                        (IReadOnlyList<string>)
                            [
                                NestSheet.NameOf(nest),
                                $"{Figures.Mm(Math.Floor(offcut.LengthMm), 0)} × {Figures.Mm(Math.Floor(offcut.WidthMm), 0)}",
                            ]
                    )
                ),
            ]
        )
        {
            WidthMm = HalfMm,
        };

    private static Table Hardware(StockPlan plan) =>
        new(
            SheetsWords.Of["cut-list.hardware"],
            [
                new Column(SheetsWords.Of["column.what"], Align.Left, 88),
                new Column(SheetsWords.Of["column.pieces"], Align.Right, 24),
                new Column(SheetsWords.Of["column.one"], Align.Right, 28),
                new Column(PriceHead(plan), Align.Right, 24),
            ],
            [
                .. plan.Hardware.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            JigsWords.Of.Format(
                                $"hardware.{row.Item.Kind}",
                                row.Item.DiameterMm,
                                row.Item.LengthMm
                            ),
                            $"{row.Item.Count}",
                            Money(row.Price),
                            Money(row.Cost),
                        ]
                ),
            ]
        )
        {
            WidthMm = HalfMm,
        };

    private static Notes Cost(StockPlan plan)
    {
        List<string> lines =
        [
            SheetsWords.Of.Format(
                "cut-list.total",
                plan.Cost.Sheets,
                plan.Cost.Hardware,
                plan.Cost.Total,
                plan.Currency,
                plan.Cost.SheetsUsed
            ),
            SheetsWords.Of.Format(
                "cut-list.fraction",
                plan.Sheets.Count,
                plan.LeastSheets,
                plan.UsedFraction,
                plan.CutFraction
            ),
        ];
        if (plan.Cost.Unpriced > 0)
        {
            lines.Add(SheetsWords.Of.Format("cut-list.unpriced", plan.Cost.Unpriced));
        }

        if (plan.Cost.HasBuiltInPrices)
        {
            lines.Add(SheetsWords.Of["cut-list.invented"]);
        }

        return new Notes(SheetsWords.Of["cut-list.cost"], lines, HalfMm);
    }

    private static string PriceHead(StockPlan plan) =>
        SheetsWords.Of.Format("column.price", plan.Currency);

    private static string Money(double? price) =>
        price is { } known ? known.ToString("N2", CultureInfo.CurrentCulture) : "–";
}
