using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Curves over two axes, with guides at the ticks.</summary>
/// <param name="Heading">Heading over it; empty for none.</param>
/// <param name="X">Axis along the bottom.</param>
/// <param name="Y">Axis up the left.</param>
/// <param name="Series">The curves; they are cut where they leave the axes.</param>
/// <param name="Extent">How much of the sheet it takes, letters included.</param>
public sealed record Plot(
    string Heading,
    PlotAxis X,
    PlotAxis Y,
    IReadOnlyList<PlotSeries> Series,
    Size Extent
) : Block
{
    /// <summary>Ranges to be hit, drawn as hatched boxes, in the plot's values; cut where they leave the axes.</summary>
    public IReadOnlyList<Box> Zones { get; init; } = [];

    /// <summary>Points that are held or measured.</summary>
    public IReadOnlyList<Point> Marked { get; init; } = [];

    public TextStyle Style { get; init; } = TextStyle.Body;

    public override Size Size => Extent;

    protected override void DrawAt(Ink ink, Point corner)
    {
        ArgumentNullException.ThrowIfNull(ink);
        // A heading that is wider than the plot is lettered as high as the rest.
        TextStyle head = Style.ItsHeading;
        bool isLong = head.WidthMm(Heading) > Extent.WidthMm;
        ink.Text(
            Heading,
            corner,
            isLong ? head with { HeightMm = Style.HeightMm } : head,
            rise: Rise.Top
        );
        Box field = Field(corner);
        DrawAxes(ink, field, corner);
        Point On(Point value) =>
            new(
                field.LeftMm + (X.ShareOf(value.X) * field.WidthMm),
                field.BottomMm + (Y.ShareOf(value.Y) * field.HeightMm)
            );

        foreach (Box zone in Zones)
        {
            Point low = On(zone.Min);
            Point high = On(zone.Max);
            new Region(
                Shape.Rectangle(
                    Box.Of(
                        Math.Clamp(low.X, field.LeftMm, field.RightMm),
                        Math.Clamp(low.Y, field.BottomMm, field.TopMm),
                        Math.Clamp(high.X, field.LeftMm, field.RightMm),
                        Math.Clamp(high.Y, field.BottomMm, field.TopMm)
                    )
                )
            )
            {
                HatchDegrees = 45,
                HatchSpacingMm = 1.2,
                Edge = LineStyle.Detail,
            }.Draw(ink, Placement.Identity);
        }

        List<(double Y, string Name)> names = [];
        foreach (PlotSeries series in Series)
        {
            Shape? last = null;
            foreach (Shape run in Clipping.Inside([.. series.Points.Select(On)], field))
            {
                ink.Stroke(run, series.Style);
                last = run;
            }

            if (last is null)
            {
                continue;
            }

            if (series.NameOnLine)
            {
                NameOn(ink, last, series.Name);
            }
            else if (last.End.X > field.RightMm - 0.5)
            {
                names.Add((last.End.Y, series.Name));
            }
            else
            {
                // It leaves by the top or the bottom: its name stands inside, at that end.
                bool low = last.End.Y < field.Centre.Y;
                Point at = last.End + new Vector(2, low ? 1.5 : -1.5);
                ink.Text(series.Name, at, Style, rise: low ? Rise.Baseline : Rise.Top, clear: true);
            }
        }

        Name(ink, names, field);
        foreach (Point marked in Marked)
        {
            new Dot(On(marked), 2).Draw(ink, Placement.Identity);
        }
    }

    // Along the line, a little before its end, where it is clear of the axes.
    private void NameOn(Ink ink, Shape line, string name)
    {
        Vector back = line.Start - line.End;
        double room = (Style.WidthMm(name) / 2) + (3 * Style.HeightMm);
        double angle = back.Angle;
        angle =
            angle > Math.PI / 2 ? angle - Math.PI
            : angle <= -Math.PI / 2 ? angle + Math.PI
            : angle;
        Point at = line.End + (back * Math.Min(0.5, room / back.Length));
        ink.Text(name, at, Style, Align.Centre, Rise.Middle, angle, clear: true);
    }

    /// <summary>The names right of the field, apart from each other and not below it.</summary>
    private void Name(Ink ink, List<(double Y, string Name)> names, Box field)
    {
        names.Sort((a, b) => a.Y.CompareTo(b.Y));
        double[] places = Spreading.Spread([.. names.Select(n => n.Y)], 1.5 * Style.HeightMm);
        double lift = places.Length == 0 ? 0 : Math.Max(0, field.BottomMm + 0.5 - places[0]);
        for (int i = 0; i < places.Length; i++)
        {
            Point at = new(field.RightMm + 2, places[i] + lift);
            ink.Text(names[i].Name, at, Style, Align.Left, Rise.Middle);
        }
    }

    private Box Field(Point corner)
    {
        double ticks = Y.Ticks().Select(t => Style.WidthMm(Y.Figure(t))).DefaultIfEmpty().Max();
        double names = Series
            .Select(s => s.Name.Length > 0 && !s.NameOnLine ? Style.WidthMm(s.Name) + 2 : 0)
            .DefaultIfEmpty()
            .Max();
        double head = Heading.Length > 0 ? Style.ItsHeading.HeightMm + Style.HeightMm + 3 : 1;
        return Box.Of(
            corner.X + (2 * Style.HeightMm) + 2 + ticks,
            corner.Y - Extent.HeightMm + (4.4 * Style.HeightMm),
            corner.X + Extent.WidthMm - Math.Max(names, 2),
            corner.Y - head
        );
    }

    private void DrawAxes(Ink ink, Box field, Point corner)
    {
        foreach (double tick in X.Ticks())
        {
            double x = field.LeftMm + (X.ShareOf(tick) * field.WidthMm);
            ink.Stroke(
                Shape.Line(new(x, field.BottomMm), new(x, field.BottomMm - 1)),
                LineStyle.Detail
            );
            ink.Text(X.Figure(tick), new(x, field.BottomMm - 2.2), Style, Align.Centre, Rise.Top);
        }

        foreach (double tick in Y.Ticks())
        {
            double y = field.BottomMm + (Y.ShareOf(tick) * field.HeightMm);
            ink.Stroke(
                Shape.Line(new(field.LeftMm - 1, y), new(field.LeftMm, y)),
                LineStyle.Detail
            );
            if (y > field.BottomMm + 0.5)
            {
                ink.Stroke(
                    Shape.Line(new(field.LeftMm, y), new(field.RightMm, y)),
                    LineStyle.Guide,
                    Level.Ground
                );
            }

            ink.Text(Y.Figure(tick), new(field.LeftMm - 2.2, y), Style, Align.Right, Rise.Middle);
        }

        ink.Stroke(
            Shape.Polyline([field.TopLeft, field.BottomLeft, field.BottomRight]),
            LineStyle.Detail
        );
        ink.Text(
            X.Label,
            new(field.Centre.X, field.BottomMm - (3.2 * Style.HeightMm)),
            Style,
            Align.Centre,
            Rise.Top
        );
        ink.Text(
            Y.Label,
            new(corner.X, field.Centre.Y),
            Style,
            Align.Centre,
            Rise.Top,
            Math.PI / 2
        );
    }
}
