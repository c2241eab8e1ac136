using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Bench;

/// <summary>A full-size body sheet on A1: outline, offsets as contours, holes, dimensions, table, notes and a plot.</summary>
internal static class BodySheet
{
    public static Sheet Make()
    {
        OutlineFeatures heron = new(488, new(104, 282), new(190, 236), new(356, 368));
        Chain closed = MinimumVariation.Solve(heron).Outline!.Closed;
        Shape outline = Shape.Of(closed.ToBeziers(0.01));
        TitleBlock title = new("Body", "FW-0042-01") { Owner = "Tern Lane workshop" };
        Sheet sheet = new(title, Paper.A1.Turned());
        Box area = sheet.Area;
        List<Item> items =
        [
            new Region(outline) { Fill = Tone.Wood, Edge = LineStyle.Outline },
            new Line(new Point(-25, 0), new Point(515, 0), LineStyle.Centreline),
            new Region(Shape.Circle(new(148, 0), 42)) { HatchDegrees = 45 },
            new LinearDimension(new(0, 0), new(488, 0), Side.Left, 225),
            new OrdinateDimensions(
                new(0, 0),
                [.. Enumerable.Range(0, 25).Select(i => new Station(new(20 * i, 100)))],
                Side.Right,
                120
            ),
        ];
        for (int i = 1; i <= 12; i++)
        {
            Placement smaller = Placement.Of(new(250, 0), new(250, 0), 1 - (0.05 * i));
            items.Add(new Line(outline.Placed(smaller), LineStyle.Contour));
            items.Add(new Hole(new(30 * i, 60), 8.4));
        }

        View view = new(items, ViewFrame.Front) { RotationRad = View.NeckUp };
        string[][] rows =
        [
            .. Enumerable.Range(0, 49).Select(i => new[] { $"{10 * i}", "282.0", "71.0" }),
        ];
        return sheet
            .Add(view.TopLeftAt(area.TopLeft))
            .Add(
                Flow.Down(
                    new(area.RightMm - 150, area.TopMm),
                    8,
                    new Table(
                        "Stations",
                        [new("at"), new("width", Align.Right), new("radius", Align.Right)],
                        rows
                    )
                    {
                        WidthMm = 150,
                    },
                    new Notes(
                        "Notes",
                        [string.Join(' ', Enumerable.Repeat("Measure before you cut.", 20))],
                        150
                    )
                )
            );
    }
}
