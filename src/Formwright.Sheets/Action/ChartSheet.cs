using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Tolerances;

namespace Formwright.Sheets.Action;

/// <summary>The ramp-against-dome chart for the shop's wall, how to read it, and what the action depends on.</summary>
internal static class ChartSheet
{
    private const int Ranked = 6;
    private const double PlotMm = 158;
    private const double GridMm = 0.5;

    public static NamedSheet Of(Guitar guitar, NeckAndAction action)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.chart", "document.check"), Paper.A4);
        Box area = sheet.Area;
        double half = (area.WidthMm - 10) / 2;
        Block plot = Plot(guitar, action, area.WidthMm) with { TopLeft = area.TopLeft };
        Point below = new(area.LeftMm, plot.Box.BottomMm - 6);
        return new NamedSheet(
            "chart",
            sheet
                .Add(plot)
                .Add(
                    Flow.Down(
                        below,
                        5,
                        new Notes(SheetsWords.Of["chart.how"], How(guitar, action), half)
                        {
                            Numbered = true,
                        }
                    )
                )
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm + half + 10, below.Y),
                        5,
                        [.. Sureness(guitar, action, half)]
                    )
                ),
            IsTiled: false
        );
    }

    private static Plot Plot(Guitar guitar, NeckAndAction action, double widthMm)
    {
        RampDomeChart chart = action.Chart;
        double wanted = guitar.Design.Saddle.HeightMm;
        List<PlotSeries> series = [.. Grid(chart)];
        foreach (ChartLine line in chart.Lines)
        {
            bool whole = Math.Abs(line.SaddleMm - Math.Round(line.SaddleMm)) < 1e-6;
            bool isWanted = Math.Abs(line.SaddleMm - wanted) < 1e-6;
            series.Add(
                new PlotSeries(
                    [.. line.Points.Select(each => new Point(each.DomeMm, each.RampMm))],
                    whole ? SheetsWords.Of.Format("chart.saddle", line.SaddleMm) : ""
                )
                {
                    NameOnLine = true,
                    Style =
                        isWanted ? LineStyle.Curve with { WidthMm = 0.5 }
                        : whole ? LineStyle.Curve
                        : LineStyle.Hair,
                }
            );
        }

        (double dome, double ramp) = chart.Design;
        (double domeBox, double rampBox) = chart.BoxMm;
        return new Plot(
            SheetsWords.Of.Format(
                "chart.heading",
                action.Model.Figures.ActionBassMm,
                action.Model.Figures.ActionTrebleMm
            ),
            new PlotAxis(SheetsWords.Of["chart.dome"], chart.DomeMm.Low, chart.DomeMm.High),
            new PlotAxis(SheetsWords.Of["chart.ramp"], chart.RampMm.Low, chart.RampMm.High),
            series,
            new Size(widthMm, PlotMm)
        )
        {
            Style = TextStyle.Body.Larger,
            Zones = [Box.Of(dome - domeBox, ramp - rampBox, dome + domeBox, ramp + rampBox)],
            Marked = [new Point(dome, ramp)],
        };
    }

    // Lines to go up and across by, every half mm.
    private static IEnumerable<PlotSeries> Grid(RampDomeChart chart)
    {
        (double left, double right) = chart.DomeMm;
        (double low, double high) = chart.RampMm;
        for (double x = left + GridMm; x < right + 1e-9; x += GridMm)
        {
            yield return new PlotSeries([new Point(x, low), new Point(x, high)])
            {
                Style = LineStyle.Guide,
            };
        }

        for (double y = low + GridMm; y < high + 1e-9; y += GridMm)
        {
            yield return new PlotSeries([new Point(left, y), new Point(right, y)])
            {
                Style = LineStyle.Guide,
            };
        }
    }

    private static string[] How(Guitar guitar, NeckAndAction action)
    {
        RampDomeChart chart = action.Chart;
        return
        [
            SheetsWords.Of["chart.how-1"],
            SheetsWords.Of.Format(
                "chart.how-2",
                chart.Design.DomeMm,
                chart.Design.RampMm,
                chart.SaddleMm
            ),
            SheetsWords.Of.Format(
                "chart.how-3",
                guitar.Design.Saddle.LeastMm,
                guitar.Design.Saddle.MostMm
            ),
            SheetsWords.Of["chart.how-4"],
        ];
    }

    private static IEnumerable<Block> Sureness(Guitar guitar, NeckAndAction action, double widthMm)
    {
        yield return new Table(
            SheetsWords.Of["chart.depends"],
            [new Column(""), new Column(SheetsWords.Of["column.plus-minus"], Align.Right, 26)],
            [
                .. action
                    .ActionBass.Ranked.Take(Ranked)
                    .Select(each =>
                        (IReadOnlyList<string>)
                            [NameOf(each), $"± {Figures.Fixed(each.PlusMinus, 2)}"]
                    ),
            ]
        )
        {
            WidthMm = widthMm,
        };
        if (action.Chance is { } chance)
        {
            yield return new Notes(
                "",
                [
                    SheetsWords.Of.Format(
                        "chart.builds",
                        chance.ActionBassMm.Low,
                        chance.ActionBassMm.High,
                        chance.ActionTrebleMm.Low,
                        chance.ActionTrebleMm.High
                    ),
                    SheetsWords.Of.Format(
                        "chart.chance",
                        100 * chance.InBand,
                        guitar.Design.Action.BandMm,
                        100 * chance.SaddleInRange,
                        chance.SaddleBlankMm - guitar.Design.Saddle.SlotBottomMm
                    ),
                ],
                widthMm
            );
        }
    }

    private static string NameOf(Contribution each) =>
        InstrumentWords.Of[$"chain-input.{each.Input.Name}"];
}
