using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>The card for the bench: a straight edge on the board, what it must show where, and room to write what it shows.</summary>
internal static class GapSheet
{
    private const double WidthMm = 168;
    private const double Heights = 20;

    public static NamedSheet Of(Guitar guitar, WorkboardPlan plan)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.gaps", "document.check"), Paper.A4);
        Box area = sheet.Area;
        View side = new([.. Side(guitar, plan)], ViewFrame.Section)
        {
            Scale = 0.2,
            Heights = Heights,
            Label = SheetsWords.Of["gaps.view"],
        };
        View placed = side.TopLeftAt(
            new Point(area.LeftMm + ((area.WidthMm - side.Bounds().WidthMm) / 2), area.TopMm)
        );
        double below = placed.Bounds().BottomMm - 8;
        return new NamedSheet(
            "gaps",
            sheet
                .Add(placed)
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm, below),
                        6,
                        Table(plan, WidthMm, withBlanks: true),
                        new Notes("", [SheetsWords.Of["gaps.how"]], WidthMm)
                    )
                ),
            IsTiled: false
        );
    }

    /// <summary>The gap table; with blanks it has columns to write measured gaps in.</summary>
    public static Table Table(
        WorkboardPlan plan,
        double widthMm,
        bool withBlanks = false,
        TextStyle? style = null
    )
    {
        List<Column> columns =
        [
            new(SheetsWords.Of["column.place"]),
            new(SheetsWords.Of["column.from-nut"], Align.Right, 24),
            new(SheetsWords.Of["column.gap"], Align.Right, 24) { Strong = true },
        ];
        if (withBlanks)
        {
            columns.Add(new Column(SheetsWords.Of["column.measured-bass"], Align.Right, 30));
            columns.Add(new Column(SheetsWords.Of["column.measured-treble"], Align.Right, 30));
        }

        string[] blanks = withBlanks ? ["", ""] : [];
        return new Table(
            SheetsWords.Of["gaps.table"],
            columns,
            [
                .. plan.GapTable.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            row.PlaceName,
                            Figures.Fixed(row.XMm, 1),
                            row.IsRest
                                ? Figures.Fixed(row.GapMm, 2)
                                : $"{Figures.Fixed(row.GapMm, 2)} ± {Figures.Fixed(row.ToleranceMm, 2)}",
                            .. blanks,
                        ]
                ),
            ]
        )
        {
            WidthMm = widthMm,
            Style = style ?? TextStyle.Body,
        };
    }

    private static IEnumerable<Item> Side(Guitar guitar, WorkboardPlan plan)
    {
        double join = guitar.JoinMm;
        double tail = guitar.TailMm;
        List<Point> surface = [new(0, -plan.RampMm), new(join, 0)];
        for (double u = guitar.Dome.StartUMm; u < guitar.Outline.BodyLengthMm; u += 4)
        {
            surface.Add(new Point(join + u, -plan.Relief.Shape.HeightAt(new Point(u, 0))));
        }

        surface.Add(new Point(tail, 0));
        Shape board = Shape.Polyline(
            [.. surface, new Point(tail, -6), new Point(0, -6)],
            closed: true
        );
        yield return new Region(board) { Fill = Tone.Wood };
        yield return new Line(Shape.Polyline(surface), LineStyle.Outline);
        yield return new Line(Shape.Rectangle(Box.Of(0, 0, tail, 1.1)), LineStyle.Detail);
        yield return new Label(SheetsWords.Of["gaps.straight-edge"], new Point(join * 0.75, 0.55))
        {
            Rise = Rise.Middle,
            Align = Align.Centre,
        };
        yield return new LinearDimension(
            new Point(0, -plan.RampMm),
            new Point(0, 0),
            Drawing.Side.Left,
            5
        )
        {
            Decimals = 2,
        };
        Point deepest = new(join + plan.Relief.Deepest.X, -plan.Relief.DeepestMm);
        yield return new LinearDimension(deepest, new Point(deepest.X, 0), Drawing.Side.Right, 0)
        {
            Decimals = 2,
            Style = TextStyle.SmallFigure,
        };
        yield return Below("station.nut", 0, Align.Left);
        yield return Below("station.join", join, Align.Centre);
        yield return Below("station.tail", tail, Align.Right);
    }

    private static Label Below(string key, double x, Align align) =>
        new(SheetsWords.Of[key], new Point(x, -6))
        {
            Align = align,
            Rise = Rise.Top,
            ShiftMm = new(0, -2),
        };
}
