using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Trace;

namespace Formwright.Sheets.Trace;

/// <summary>Each bump drawn large beside the outline: how far the trace stands off the fair curve, along the curve.</summary>
internal static class BumpSheet
{
    private const int PlotsOnSheet = 4;
    private const double PlotHeightMm = 60;
    private const double GapMm = 8;

    /// <summary>How much of the curve is shown to each side, in lengths of the bump.</summary>
    private const double Reach = 1.6;

    private const int MostPoints = 500;

    internal static IEnumerable<NamedSheet> Of(TraceResult trace, string name)
    {
        int most = Math.Min(trace.Bumps.Count, BumpTable.Most);
        for (int first = 0; first < most; first += PlotsOnSheet)
        {
            int count = Math.Min(PlotsOnSheet, most - first);
            string key = first == 0 ? "bumps" : $"bumps-{1 + (first / PlotsOnSheet)}";
            yield return new NamedSheet(key, Page(trace, name, first, count), IsTiled: false);
        }
    }

    private static Sheet Page(TraceResult trace, string name, int first, int count)
    {
        Sheet sheet = new(TraceSheets.Title(name, "sheet.bumps"), Paper.A3.Turned());
        Box area = sheet.Area;
        View view = new([.. Items(trace, first, count)], ViewFrame.Front)
        {
            RotationRad = View.NeckUp,
        };
        Box beside = sheet.BesideTitle;
        sheet = sheet.Add(
            view.FittedIn(Box.Of(area.LeftMm, beside.BottomMm, beside.RightMm, area.TopMm), 0.5)
        );
        double left = beside.RightMm + GapMm;
        double step = Math.Min(PlotHeightMm + GapMm, (area.HeightMm + GapMm) / PlotsOnSheet);
        for (int i = 0; i < count; i++)
        {
            sheet = sheet.Add(
                PlotOf(trace, first + i, area.RightMm - left, step - GapMm) with
                {
                    TopLeft = new Point(left, area.TopMm - (i * step)),
                }
            );
        }

        return sheet;
    }

    private static IEnumerable<Item> Items(TraceResult trace, int first, int count)
    {
        double length = trace.Fair.BodyLengthMm;
        yield return new Line(TraceSheets.Closed(trace.Fair), LineStyle.Outline);
        yield return new Line(new Point(-6, 0), new Point(length + 6, 0), LineStyle.Centreline);
        for (int i = first; i < first + count; i++)
        {
            yield return TraceSheets.BalloonOf(trace, i, -10);
        }

        yield return new BassTreble(
            ViewFrame.Front,
            length * 0.3,
            trace.Fair.WidthAt(length * 0.3) / 4
        );
    }

    private static Plot PlotOf(TraceResult trace, int index, double widthMm, double heightMm)
    {
        Bump bump = trace.Bumps[index];
        double half = Math.Max(15, Reach * bump.LengthMm);
        double from = Math.Max(0, bump.ArcMm - half);
        double to = Math.Min(trace.Fair.HalfPerimeterMm, bump.ArcMm + half);
        List<Point> stand = Stand(trace, bump, from, to);
        double height =
            1.25 * Math.Max(bump.HeightMm, stand.Count > 0 ? stand.Max(p => Math.Abs(p.Y)) : 0);
        string heading = SheetsWords.Of.Format(
            "bump.heading",
            index + 1,
            BumpTable.What(bump),
            bump.UMm,
            bump.HeightMm,
            bump.LengthMm
        );
        return new Plot(
            heading,
            new PlotAxis(SheetsWords.Of["bump.along"], from, to),
            PlotAxis.Around(SheetsWords.Of["bump.off"], [-height, height]),
            [
                new PlotSeries([new Point(from, 0), new Point(to, 0)]) { Style = LineStyle.Detail },
                new PlotSeries(stand) { Style = LineStyle.Curve },
            ],
            new Size(widthMm, heightMm)
        )
        {
            Style = TextStyle.Body,
        };
    }

    /// <summary>How far the points of the bump's side stand off the fair curve of that side, along it.</summary>
    private static List<Point> Stand(TraceResult trace, Bump bump, double from, double to)
    {
        Point[] stand =
        [
            .. trace.StandOff[bump.Side].Where(point => point.X >= from && point.X <= to),
        ];
        int stride = 1 + (stand.Length / MostPoints);
        return [.. stand.Where((_, i) => i % stride == 0)];
    }
}
