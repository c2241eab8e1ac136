using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>Depths of the relief across the board at a few stations.</summary>
internal static class ReliefSections
{
    private static readonly double[] AcrossMm = [0, 30, 60, 90, 120, 150];

    /// <summary>Depths at every 50 mm along and 30 mm across; the relief is symmetric, so one side is enough.</summary>
    public static Table Table(Guitar guitar, WorkboardPlan plan, double widthMm)
    {
        double start = Math.Ceiling((guitar.JoinMm + guitar.Dome.StartUMm) / 50) * 50;
        List<IReadOnlyList<string>> rows = [];
        for (double x = start; x < guitar.TailMm; x += 50)
        {
            double u = x - guitar.JoinMm;
            rows.Add([
                Figures.Mm(x, 0),
                .. AcrossMm.Select(y =>
                {
                    double depth = plan.Relief.Shape.HeightAt(new Point(u, y));
                    return depth > 0 ? Figures.Fixed(depth, 2) : "–";
                }),
            ]);
        }

        return new Table(
            SheetsWords.Of["workboard.depths"],
            [
                new Column(SheetsWords.Of["column.from-nut"], Align.Right),
                .. AcrossMm.Select(y => new Column(
                    y == 0 ? SheetsWords.Of["column.centre"] : $"± {Figures.Mm(y, 0)}",
                    Align.Right,
                    28
                )),
            ],
            rows
        )
        {
            WidthMm = widthMm,
            Style = TextStyle.Body.Larger,
        };
    }

    /// <summary>Cuts across the relief at the deepest place and at the lower harmonic bar, side 1:2 and heights ten times that, under each other.</summary>
    public static IEnumerable<View> Views(Guitar guitar, WorkboardPlan plan, Point topLeft)
    {
        double lowest = guitar.Design.HarmonicBars.Select(bar => bar.AtMm).DefaultIfEmpty(0).Max();
        (string Key, double U)[] cuts =
        [
            ("workboard.cut-bar", lowest),
            ("workboard.cut-deepest", plan.Relief.Deepest.X),
        ];
        Point at = topLeft;
        foreach (
            (string key, double u) in cuts.Where(cut =>
                plan.Relief.Shape.HeightAt(new Point(cut.U, 0)) > 0
            )
        )
        {
            View view = new View([.. Cut(guitar, plan, u)], ViewFrame.Section)
            {
                Scale = 0.5,
                Heights = 10,
                Label = SheetsWords.Of.Format(key, guitar.JoinMm + u),
            }.TopLeftAt(at);
            yield return view;
            at = new Point(at.X, view.Bounds().BottomMm - 12);
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
        foreach (double share in new[] { 0, 0.35, 0.65 })
        {
            double y = half * share;
            double depth = plan.Relief.Shape.HeightAt(new Point(u, y));
            if (depth > 0.3)
            {
                yield return new LinearDimension(
                    new Point(y, -depth),
                    new Point(y, 0),
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
