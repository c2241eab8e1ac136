using CsCheck;
using Formwright.Curves;
using Formwright.Testing;

namespace Formwright.Drawing.Tests;

public sealed class LayoutTests
{
    private static List<TextMark> Texts(Item item)
    {
        Ink ink = new();
        item.Draw(ink, Placement.Identity);
        return [.. ink.Marks().OfType<TextMark>()];
    }

    [Fact]
    public void Ordinates_never_touch_and_stay_in_order() =>
        Gen.Double[0, 200]
            .Array[1, 30]
            .Holds(
                places =>
                {
                    OrdinateDimensions item = new(
                        new(0, 0),
                        [.. places.Select(x => new Station(new(x, 0)))],
                        Side.Above,
                        15
                    );
                    List<TextMark> texts = [.. Texts(item).OrderBy(t => t.Start.X)];
                    return texts
                        .Zip(texts.Skip(1))
                        .All(two => two.Second.Start.X - two.First.Start.X >= 3.75 - 1e-9);
                },
                iter: 300
            );

    [Fact]
    public void Hatching_covers_its_area_and_spares_its_hole()
    {
        // The length of the lines times their distance tends to the area: a square of 60 with a hole of radius 20.
        Region region = new([Shape.Rectangle(Box.Of(0, 0, 60, 60)), Shape.Circle(new(30, 30), 20)])
        {
            HatchDegrees = 45,
            HatchSpacingMm = 0.5,
        };
        Ink ink = new();
        region.Draw(ink, Placement.Identity);
        StrokeMark[] lines = [.. ink.Marks().OfType<StrokeMark>()];
        double area = 0.5 * lines.Sum(l => l.Shape.Start.DistanceTo(l.Shape.End));
        Assert.Equal(3600 - (400 * Math.PI), area, 10.0);
        Assert.All(
            lines,
            l => Assert.True(l.Shape.Start.Towards(l.Shape.End, 0.5).DistanceTo(new(30, 30)) > 19.9)
        );
    }

    [Fact]
    public void Notes_are_wrapped_within_their_width()
    {
        Notes notes = new("Notes", [string.Join(' ', Enumerable.Repeat("bench", 40)), "short"], 80)
        {
            Numbered = true,
            TopLeft = new(20, 200),
        };
        List<TextMark> texts = Texts(notes);
        Assert.True(texts.Count > 6);
        Assert.All(texts, t => Assert.True(t.Start.X + t.WidthMm <= 100 + 1e-9));
        Assert.All(texts, t => Assert.True(t.Start.Y >= notes.Box.BottomMm - 1e-9));
    }

    [Fact]
    public void Table_is_as_large_as_it_says_and_sets_figures_to_the_right()
    {
        Table table = new(
            "Heights",
            [new("place"), new("mm", Align.Right)],
            [
                ["nut", "1.50"],
                ["a place whose name has to be wrapped", "12.25"],
                ["short row"],
            ]
        )
        {
            TopLeft = new(20, 200),
        };
        table = table with { Columns = [new("place", Align.Left, 30), table.Columns[1]] };
        Ink ink = new();
        Box drawn = ink.Measure(() => table.Draw(ink, Placement.Identity));
        Assert.Equal(table.Size.WidthMm, drawn.WidthMm, 1e-6);
        Assert.Equal(table.Size.HeightMm, drawn.HeightMm, 1e-6);
        TextMark[] figures =
        [
            .. ink.Marks().OfType<TextMark>().Where(t => t.Text is "1.50" or "12.25"),
        ];
        Assert.Equal(
            figures[0].Start.X + figures[0].WidthMm,
            figures[1].Start.X + figures[1].WidthMm,
            1e-9
        );
    }

    [Fact]
    public void Blocks_flow_down_without_touching()
    {
        IReadOnlyList<Block> blocks = Flow.Down(
            new(30, 250),
            5,
            new Notes("One", ["text"], 60),
            new Cautions(["Wear a mask."], 60),
            new Table(
                "",
                [new("a")],
                [
                    ["b"],
                ]
            )
        );
        Assert.Equal(new(30, 250), blocks[0].TopLeft);
        Assert.Equal(5, blocks[0].Box.BottomMm - blocks[1].TopLeft.Y, 1e-9);
        Assert.Equal(5, blocks[1].Box.BottomMm - blocks[2].TopLeft.Y, 1e-9);
    }

    [Theory]
    [InlineData(0, 5, 1)]
    [InlineData(0, 3.2, 0.5)]
    [InlineData(-0.02, 0.02, 0.01)]
    [InlineData(0, 488, 100)]
    public void Axis_has_round_ticks(double from, double to, double step)
    {
        PlotAxis axis = new("", from, to);
        Assert.Equal(step, axis.Step, 1e-12);
        Assert.All(axis.Ticks(), t => Assert.InRange(t, from - 1e-9, to + 1e-9));
        Assert.InRange(axis.Ticks().Count, 4, 9);
    }

    [Fact]
    public void Axis_around_values_holds_them()
    {
        Gen.Double[-1e4, 1e4]
            .Array[1, 9]
            .Holds(
                values =>
                {
                    PlotAxis axis = PlotAxis.Around("", values);
                    return values.All(v => v >= axis.From - 1e-9 && v <= axis.To + 1e-9);
                },
                iter: 300
            );
        Assert.Throws<ArgumentException>(() => PlotAxis.Around("", []));
        Assert.Throws<ArgumentException>(() => PlotAxis.Around("", [double.NaN]));
    }

    [Fact]
    public void Curves_are_cut_at_the_axes()
    {
        Plot plot = new(
            "",
            new("", 0, 10),
            new("", 0, 10),
            [new([new(-5, 5), new(5, 15), new(20, 0)])],
            new(100, 80)
        )
        {
            TopLeft = new(20, 200),
        };
        Ink ink = new();
        plot.Draw(ink, Placement.Identity);
        StrokeMark[] curves =
        [
            .. ink.Marks().OfType<StrokeMark>().Where(m => m.Style == LineStyle.Curve),
        ];
        // It touches the corner (0, 10) from outside only; the rest leaves by the right.
        Assert.All(curves, c => Assert.True(plot.Box.Holds(c.Shape.Bounds(), 1e-6)));
    }

    [Fact]
    public void Figure_on_a_fill_is_cleared_in_its_tone()
    {
        Ink ink = new();
        new Region(Shape.Rectangle(Box.Of(0, 0, 50, 50))) { Fill = Tone.Wood }.Draw(
            ink,
            Placement.Identity
        );
        new Label("in", new(25, 25)) { Clear = true }.Draw(ink, Placement.Identity);
        new Label("out", new(75, 25)) { Clear = true }.Draw(ink, Placement.Identity);
        Assert.Equal(
            [Tone.Wood, Tone.Paper],
            ink.Marks().OfType<FillMark>().Where(f => f.Level == Level.Clear).Select(f => f.Tone)
        );
    }
}
