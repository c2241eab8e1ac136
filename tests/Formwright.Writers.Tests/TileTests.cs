using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Testing;

namespace Formwright.Writers.Tests;

public sealed class TileTests
{
    private static readonly Shape Body = new(
        new(0, 0),
        [
            new ArcSegment(new(420, 0), 0.9),
            new LineSegment(new(420, 40)),
            new ArcSegment(new(0, 40), 0.6),
        ],
        closed: true
    );

    private static TilePlan Plan(Paper page, PrintScale? scale = null)
    {
        Sheet sheet = new(Sample.Title, Paper.A1);
        View view = new([
            new Region(Body) { Edge = LineStyle.Outline },
            new Line(new Point(-10, 20), new Point(430, 20), LineStyle.Centreline),
            new LinearDimension(new(0, 0), new(420, 0), Side.Above, 0),
        ]);
        return TilePlan.Of(sheet.Add(view.CentredIn(sheet.Area)).Draw(), page, scale);
    }

    private static string Write(TilePlan plan)
    {
        string file = Tools.TempFile(".pdf");
        using FileStream stream = File.Create(file);
        PdfWriter.Write(stream, plan);
        return file;
    }

    private static List<double> Strokes(
        string pdf,
        int page,
        TilePlan plan,
        Box strip,
        bool acrossX
    ) => Picture.StrokesOfPdf(pdf, page, plan.Page.HeightMm, strip, acrossX);

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Windows_cover_the_drawing_and_overlap_by_10_mm(string size)
    {
        TilePlan plan = Plan(size == "A4" ? Paper.A4 : Paper.A3);
        Box view = Assert.Single(plan.Sheet.Views).Box;
        Assert.True(plan.Area.Holds(view));
        foreach (Tile tile in plan.Tiles)
        {
            Tile? right = plan.Tiles.FirstOrDefault(t =>
                t.Row == tile.Row && t.Column == tile.Column + 1
            );
            Tile? below = plan.Tiles.FirstOrDefault(t =>
                t.Column == tile.Column && t.Row == tile.Row + 1
            );
            if (right is not null)
            {
                Assert.Equal(10, tile.Window.RightMm - right.Window.LeftMm, 1e-9);
            }

            if (below is not null)
            {
                Assert.Equal(10, below.Window.TopMm - tile.Window.BottomMm, 1e-9);
            }
        }

        Assert.Equal(plan.Rows * plan.Columns, plan.Tiles.Count);
        Assert.Equal(plan.Count + 1, plan.Pages().Count);
    }

    [Fact]
    public void Tiles_without_a_drawing_are_left_out()
    {
        Sheet sheet = new(Sample.Title, Paper.A0);
        // Two short lines in opposite corners of a large view.
        View view = new([
            new Line(new Point(0, 0), new Point(20, 20), LineStyle.Outline),
            new Line(new Point(600, 800), new Point(620, 820), LineStyle.Outline),
        ])
        {
            Label = "",
        };
        TilePlan plan = TilePlan.Of(sheet.Add(view.CentredIn(sheet.Area)).Draw(), Paper.A4);
        Assert.Equal(2, plan.Count);
        Assert.True(plan.Tiles.Count > 10);
    }

    [Fact]
    public void Every_page_has_its_size_its_bars_and_its_name()
    {
        TilePlan plan = Plan(Paper.A4);
        string pdf = Write(plan);
        IReadOnlyList<PrintedPage> pages = plan.Pages();
        List<(double Width, double Height)> sizes = PdfTests.PageSizes(pdf);
        Assert.Equal(pages.Count, sizes.Count);
        for (int i = 0; i < pages.Count; i++)
        {
            Assert.Equal(plan.Page.WidthMm * 72 / 25.4, sizes[i].Width, 0.0051);
            Assert.Equal(plan.Page.HeightMm * 72 / 25.4, sizes[i].Height, 0.0051);
            string number = $"{i + 1}";
            string text = Tools.Run("pdftotext", "-f", number, "-l", number, pdf, "-");
            Assert.Contains(
                i == 0 ? "How the pages go together" : pages[i].Name,
                text,
                StringComparison.Ordinal
            );
            // The window starts 16 mm from the left and 23 mm from below; the lower bar at 11 mm, the upright one at 13 mm.
            List<double> across = Strokes(pdf, i + 1, plan, Box.Of(15, 9.6, 118, 10.5), true);
            List<double> up = Strokes(pdf, i + 1, plan, Box.Of(13.4, 22, 14.6, 125), false);
            Assert.Equal(100, across[^1] - across[0], 0.05);
            Assert.Equal(100, up[^1] - up[0], 0.05);
        }
    }

    [Fact]
    public void Neighbours_show_the_same_in_their_overlap()
    {
        TilePlan plan = Plan(Paper.A4);
        string pdf = Write(plan);
        // 254 dpi: 10 pixels per mm, and every window lies on whole mm of its page.
        const int dpi = 254;
        List<(PrintedPage Page, Picture Picture)> pages =
        [
            .. plan.Pages().Select((page, i) => (page, Picture.OfPdf(pdf, i + 1, dpi))),
        ];
        int compared = 0;
        foreach (Tile tile in plan.Tiles.Where(t => !t.IsEmpty))
        {
            foreach (Tile next in plan.Tiles.Where(t => !t.IsEmpty))
            {
                if (next.Row == tile.Row && next.Column == tile.Column + 1)
                {
                    compared += Compare(tile, next);
                }

                if (next.Column == tile.Column && next.Row == tile.Row + 1)
                {
                    compared += Compare(tile, next);
                }
            }
        }

        Assert.True(compared > 2);

        int Compare(Tile one, Tile other)
        {
            (PrintedPage pageA, Picture a) = pages.Single(p => p.Page.Name == one.Name);
            (PrintedPage pageB, Picture b) = pages.Single(p => p.Page.Name == other.Name);
            // The shared part of both windows, without the fine rule around each.
            Box shared = new Box(
                new(
                    Math.Max(one.Window.LeftMm, other.Window.LeftMm),
                    Math.Max(one.Window.BottomMm, other.Window.BottomMm)
                ),
                new(
                    Math.Min(one.Window.RightMm, other.Window.RightMm),
                    Math.Min(one.Window.TopMm, other.Window.TopMm)
                )
            ).Grown(-0.5);
            Point fromA = pageA.Content.Apply(shared.TopLeft);
            Point fromB = pageB.Content.Apply(shared.TopLeft);
            int width = (int)(shared.WidthMm * 10);
            int height = (int)(shared.HeightMm * 10);
            double difference = 0;
            double dark = 0;
            for (int y = 0; y < height; y++)
            {
                for (int x = 0; x < width; x++)
                {
                    double da = At(a, fromA, x, y);
                    difference += Math.Abs(da - At(b, fromB, x, y));
                    dark += da;
                }
            }

            Assert.True(dark > 100, "nothing to compare");
            Assert.True(
                difference < 0.02 * dark,
                $"{one.Name}, {other.Name}: {difference} of {dark}"
            );
            return 1;
        }

        static double At(Picture picture, Point from, int x, int y) =>
            picture.Dark(
                (int)Math.Round(from.X * 10) + x,
                picture.Height - (int)Math.Round(from.Y * 10) + y
            );
    }

    [Theory]
    [InlineData(148.8, 201)]
    [InlineData(136.5, 190)]
    public void Print_scale_keeps_the_bars_true_on_tiles(double acrossMm, double upMm)
    {
        PrintScale scale = PrintScale.FromMeasured(acrossMm, upMm);
        TilePlan plan = Plan(Paper.A4, scale);
        string pdf = Write(plan);
        PrintedPage first = plan.Pages()[1];
        double middleX = plan.Page.WidthMm / 2;
        double middleY = plan.Page.HeightMm / 2;
        double X(double mm) => middleX + ((mm - middleX) / scale.X);
        double Y(double mm) => middleY + ((mm - middleY) / scale.Y);
        // The bars as they lie from the corner of the window; and all of the page is on its paper.
        Box window = first.Clip;
        Assert.InRange(X(window.RightMm), 0, plan.Page.WidthMm - 7);
        Assert.InRange(Y(window.TopMm), 0, plan.Page.HeightMm - 7);
        Assert.InRange(X(window.LeftMm - 8), 7, 20);
        Assert.InRange(Y(window.BottomMm - 15), 7, 20);
        Box low = Box.Of(
            X(window.LeftMm - 1),
            Y(window.BottomMm - 13.4),
            X(window.LeftMm + 102),
            Y(window.BottomMm - 12.5)
        );
        List<double> across = Strokes(pdf, 2, plan, low, true);
        Assert.Equal(100, (across[^1] - across[0]) * scale.X, 0.05);
        Box left = Box.Of(
            X(window.LeftMm - 2.6),
            Y(window.BottomMm - 1),
            X(window.LeftMm - 1.4),
            Y(window.BottomMm + 102)
        );
        List<double> up = Strokes(pdf, 2, plan, left, false);
        Assert.Equal(100, (up[^1] - up[0]) * scale.Y, 0.05);
    }
}
