using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets.Trace;

/// <summary>The bend of half outlines along them: few, straight pieces make a fair curve.</summary>
internal static class CurvatureSheet
{
    private const int Samples = 600;

    internal static NamedSheet Of(
        string name,
        IReadOnlyList<(string Name, Curves.Outline Outline)> outlines
    )
    {
        Sheet sheet = new(TraceSheets.Title(name, "sheet.curvature"), Paper.A4.Turned());
        Box area = sheet.Area;
        bool isOne = outlines.Count == 1;
        List<PlotSeries> series = [];
        foreach ((string title, Curves.Outline outline) in outlines)
        {
            series.Add(
                new PlotSeries(
                    [
                        .. Enumerable
                            .Range(0, Samples + 1)
                            .Select(i => PointAt(outline, (double)i / Samples, isOne)),
                    ],
                    isOne ? title : ""
                )
                {
                    Style = series.Count == 0 ? LineStyle.Curve : LineStyle.Hidden,
                }
            );
        }

        PlotAxis along = isOne
            ? new PlotAxis(
                SheetsWords.Of["curvature.along"],
                0,
                outlines[0].Outline.HalfPerimeterMm
            )
            : new PlotAxis(SheetsWords.Of["curvature.share"], 0, 100);
        Plot plot = new(
            "",
            along,
            PlotAxis.Around(
                SheetsWords.Of[isOne ? "curvature.bend" : "curvature.relative"],
                series.SelectMany(each => each.Points).Select(point => point.Y).Append(0)
            ),
            [
                new PlotSeries([new Point(along.From, 0), new Point(along.To, 0)])
                {
                    Style = LineStyle.Detail,
                },
                .. series,
            ],
            new Size(area.WidthMm, area.HeightMm - 32)
        )
        {
            Style = TextStyle.Body.Larger,
            Marked = isOne ? [.. Nodes(outlines[0].Outline)] : [],
        };
        Notes note = new(
            "",
            isOne
                ? [SheetsWords.Of["curvature.note"]]
                :
                [
                    SheetsWords.Of.Format("curvature.lines", outlines[0].Name, outlines[1].Name),
                    SheetsWords.Of["curvature.relative-note"],
                ],
            area.WidthMm
        );
        return new NamedSheet(
            "curvature",
            sheet.Add(Flow.Down(area.TopLeft, 6, plot, note)),
            IsTiled: false
        );
    }

    private static Point PointAt(Curves.Outline outline, double share, bool isOne)
    {
        double s = share * outline.HalfPerimeterMm;
        double kappa = -outline.Half.At(s).Curvature;
        return isOne
            ? new Point(s, 1000 * kappa)
            : new Point(100 * share, kappa * outline.HalfPerimeterMm);
    }

    /// <summary>Where the pieces meet.</summary>
    private static IEnumerable<Point> Nodes(Curves.Outline outline)
    {
        for (int i = 0; i <= outline.Half.Segments.Length && i <= 64; i++)
        {
            double s = outline.Half.StartOf(i);
            yield return new Point(s, -1000 * outline.Half.At(s).Curvature);
        }
    }
}
