using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;
using Formwright.Sheets.Body;

namespace Formwright.Sheets.Tooling;

/// <summary>Depths of the relief across the board at a few stations.</summary>
internal static class ReliefSections
{
    /// <summary>Depth of the relief at even places; it is symmetric, so one side is enough.</summary>
    public static Table Depths(WorkboardPlan plan, double widthMm) =>
        Table(plan, "workboard.depths", row => row.DepthMm, widthMm);

    /// <summary>What the relief leaves under the dome at the same places.</summary>
    public static Table Clearances(WorkboardPlan plan, double widthMm) =>
        Table(plan, "workboard.clearances", row => row.ClearanceMm, widthMm);

    private static Table Table(
        WorkboardPlan plan,
        string key,
        Func<ClearanceRow, double> figure,
        double widthMm
    )
    {
        double[] across = [.. plan.Clearances.Select(row => row.AcrossMm).Distinct().Order()];
        return new Table(
            SheetsWords.Of[key],
            [
                new Column(SheetsWords.Of["column.from-nut"], Align.Right),
                .. across.Select(y => new Column(
                    y == 0 ? SheetsWords.Of["column.centre"] : $"± {Figures.Mm(y, 0)}",
                    Align.Right,
                    20
                )),
            ],
            [
                .. plan
                    .Clearances.GroupBy(row => row.XMm)
                    .Select(station =>
                        (IReadOnlyList<string>)
                            [
                                Figures.Mm(station.Key, 0),
                                .. across.Select(y =>
                                    station.FirstOrDefault(row => row.AcrossMm == y) is { } row
                                        ? Figures.Fixed(figure(row), 2)
                                        : "–"
                                ),
                            ]
                    ),
            ]
        )
        {
            WidthMm = widthMm,
            Style = TextStyle.Body.Larger,
        };
    }

    /// <summary>Cuts across the relief at the deepest place and at the lower harmonic bar, side 1:2 and heights ten times that.</summary>
    public static IEnumerable<Block> Cuts(Guitar guitar, WorkboardPlan plan)
    {
        double lowest = guitar.Design.HarmonicBars.Select(bar => bar.AtMm).DefaultIfEmpty(0).Max();
        (string Key, double U)[] cuts =
        [
            ("workboard.cut-bar", lowest),
            ("workboard.cut-deepest", plan.Relief.Deepest.X),
        ];
        foreach (
            (string key, double u) in cuts.Where(cut =>
                plan.Relief.Shape.HeightAt(new Point(cut.U, 0)) > 0
            )
        )
        {
            yield return new ViewBlock(
                new View([.. Cut(guitar, plan, u)], ViewFrame.Section)
                {
                    Scale = 0.5,
                    Heights = 10,
                    Label = SheetsWords.Of.Format(key, guitar.JoinMm + u),
                }
            );
        }
    }

    private static IEnumerable<Item> Cut(Guitar guitar, WorkboardPlan plan, double u)
    {
        double half = guitar.Outline.WidthAt(u) / 2;
        List<Point> surface = [];
        for (double y = -half; y < half; y += half / 60)
        {
            surface.Add(new Point(y, -plan.Relief.Shape.HeightAt(new Point(u, y))));
        }

        surface.Add(new Point(half, 0));
        yield return new Region(
            Shape.Polyline([.. surface, new Point(half, -5), new Point(-half, -5)], closed: true)
        )
        {
            Fill = Tone.Wood,
        };
        yield return new Line(Shape.Polyline(surface), LineStyle.Outline);
        yield return new Line(new Point(-half, 0), new Point(half, 0), LineStyle.Hidden);
        // What an overlay leaves under the dome; a carved relief leaves too little to see.
        bool overlaid = plan.Relief.Method != ReliefMethod.Carved;
        if (overlaid)
        {
            IEnumerable<Point> dome = surface.Select(at => new Point(
                at.X,
                -plan.Relief.Dome.HeightAt(new Point(u, at.X))
            ));
            yield return new Line(Shape.Polyline([.. dome]), LineStyle.Hidden);
        }

        foreach (double share in new[] { 0, 0.35, 0.65 })
        {
            double y = half * share;
            double depth = plan.Relief.Shape.HeightAt(new Point(u, y));
            if (depth > 0.3)
            {
                double from = overlaid ? -plan.Relief.Dome.HeightAt(new Point(u, y)) : 0;
                yield return new LinearDimension(
                    new Point(y, -depth),
                    new Point(y, from),
                    Side.Right,
                    0
                )
                {
                    Decimals = 2,
                    Style = TextStyle.SmallFigure,
                };
            }
        }

        yield return new Label(SheetsWords.Of["side.treble"], new Point(-half, -5))
        {
            Rise = Rise.Top,
            ShiftMm = new(0, -2),
        };
        yield return new Label(SheetsWords.Of["side.bass"], new Point(half, -5))
        {
            Rise = Rise.Top,
            Align = Align.Right,
            ShiftMm = new(0, -2),
        };
    }
}
