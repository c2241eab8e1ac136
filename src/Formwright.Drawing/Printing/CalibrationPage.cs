using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>An A4 page with two long bars to be measured, from which <see cref="PrintScale.FromMeasured"/> corrects a printer.</summary>
public static class CalibrationPage
{
    /// <summary>Length of the bar across the page.</summary>
    public const double AcrossMm = 150;

    /// <summary>Length of the bar up the page.</summary>
    public const double UpMm = 200;

    /// <summary>The page, with the workshop's own title block.</summary>
    public static Sheet Sheet(TitleBlock title)
    {
        Sheet sheet = new(title, Paper.A4);
        Box area = sheet.Area;
        Point corner = new(area.LeftMm + 10, area.BottomMm + 12);
        Notes how = new(
            Words.Of("calibration.heading"),
            [
                Words.Of("calibration.print"),
                Words.Format("calibration.measure", AcrossMm, UpMm),
                Words.Of("calibration.write"),
            ],
            area.WidthMm - 45
        )
        {
            Numbered = true,
            TopLeft = corner + new Vector(20, UpMm - 10),
        };
        return sheet.Add(
            Bar(corner, AcrossMm, new(1, 0)),
            Bar(corner, UpMm, new(0, 1)),
            Figure(corner + new Vector(AcrossMm / 2, 7), AcrossMm, 0),
            Figure(corner + new Vector(7, UpMm / 2), UpMm, 90),
            how
        );
    }

    private static Label Figure(Point at, double lengthMm, double degrees) =>
        new($"{Figures.Mm(lengthMm)} mm", at)
        {
            Style = TextStyle.Figure,
            Align = Align.Centre,
            Rise = Rise.Middle,
            Degrees = degrees,
        };

    private static Bars Bar(Point from, double lengthMm, Vector along) =>
        new(from, lengthMm, along);

    private sealed record Bars(Point From, double LengthMm, Vector Along) : Item
    {
        public override void Draw(Ink ink, Placement placement)
        {
            LineStyle style = LineStyle.ScaleBar with { Layer = "calibration-bar" };
            Vector across = 3 * Along.Left;
            Point to = From + (LengthMm * Along);
            ink.Stroke(Shape.Line(From, to), style);
            ink.Stroke(Shape.Line(From - across, From + across), style);
            ink.Stroke(Shape.Line(to - across, to + across), style);
        }
    }
}
