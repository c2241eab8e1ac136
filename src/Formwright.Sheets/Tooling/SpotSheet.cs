using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>The holes to drill into a carved board before it is hollowed: their places at full size, and a table of their depths.</summary>
internal static class SpotSheet
{
    public static NamedSheet Of(Guitar guitar, WorkboardPlan plan) =>
        ReliefFrame.Of(
            "spots",
            guitar,
            plan,
            [.. Items(guitar, plan)],
            Depths(plan),
            [
                SheetsWords.Of.Format("spots.how-1", guitar.Design.Workboard.SpotDiameterMm),
                SheetsWords.Of["spots.how-2"],
                SheetsWords.Of["spots.how-3"],
            ]
        );

    private static IEnumerable<Item> Items(Guitar guitar, WorkboardPlan plan)
    {
        double join = guitar.JoinMm;
        yield return new Line(
            new Point(join - 12, 0),
            new Point(guitar.TailMm + 12, 0),
            LineStyle.Centreline
        );
        Shape outline = Shape.Of(guitar.Outline.Closed.Moved(new Vector(join, 0)).ToBeziers(0.01));
        yield return new Line(outline, LineStyle.Hidden);
        foreach (IReadOnlyList<Point> loop in plan.Relief.Shape.Region.Loops)
        {
            Point[] edge = [.. loop.Select(p => new Point(p.X + join, -p.Y))];
            yield return new Line(Shape.Polyline(edge, closed: true), LineStyle.Detail);
        }

        foreach (Spot spot in plan.Spots)
        {
            Point at = new(spot.XMm, spot.YBMm);
            yield return new Cross(at, 3);
            yield return new Label(Figures.Fixed(spot.DepthMm, 1), at)
            {
                ShiftMm = new(2, 1.4),
                Style = TextStyle.SmallFigure,
                Clear = true,
            };
        }

        double bout = guitar.Design.Outline.UpperBout.WidthMm / 2;
        yield return new BassTreble(
            ViewFrame.Workboard,
            join + (guitar.Design.Outline.UpperBout.AtMm * 0.5),
            bout * 0.4
        );
        double side = -guitar.Design.Outline.LowerBout.WidthMm / 2;
        Point[] ends = [new(join, 0), new(guitar.TailMm, 0)];
        foreach (Point end in ends)
        {
            yield return new Line(end, new Point(end.X, side), LineStyle.Witness);
        }

        yield return new LinearDimension(
            new Point(ends[0].X, side),
            new Point(ends[1].X, side),
            Side.Left,
            10
        );
    }

    // Rows along the board, columns across; the relief is the same on both sides.
    private static Table Depths(WorkboardPlan plan)
    {
        double[] across = [.. plan.Spots.Select(s => s.YBMm).Where(y => y >= 0).Distinct().Order()];
        return new Table(
            SheetsWords.Of["spots.table"],
            [
                new Column(SheetsWords.Of["column.from-nut"], Align.Right),
                .. across.Select(y => new Column(
                    y == 0 ? SheetsWords.Of["column.centre"] : $"± {Figures.Mm(y)}",
                    Align.Right,
                    26
                )),
            ],
            [
                .. plan
                    .Spots.GroupBy(spot => spot.XMm)
                    .Select(row =>
                        (IReadOnlyList<string>)
                            [
                                Figures.Fixed(row.Key, 1),
                                .. across.Select(y =>
                                    row.FirstOrDefault(spot => spot.YBMm == y) is { } spot
                                        ? Figures.Fixed(spot.DepthMm, 1)
                                        : "–"
                                ),
                            ]
                    ),
            ]
        )
        {
            WidthMm = ReliefFrame.ColumnMm,
            Style = TextStyle.Body.Larger,
        };
    }
}
