using System.Globalization;

namespace Formwright.Drawing.Tests;

public sealed class DimensionTests
{
    private static readonly Placement Half = Placement.Of(
        new(100, 100),
        new(0, 0),
        0.5,
        View.NeckUp
    );

    private static readonly Placement Exaggerated = Placement.Of(
        new(100, 100),
        new(0, 0),
        0.25,
        heights: 12
    );

    private static List<TextMark> Texts(Item item, Placement placement)
    {
        Ink ink = new();
        item.Draw(ink, placement);
        Assert.Empty(ink.Flaws);
        return [.. ink.Marks().OfType<TextMark>()];
    }

    [Fact]
    public void Figures_are_model_millimetres_whatever_the_view()
    {
        // Neck up: along the sheet is the model's y.
        LinearDimension across = new(new(10, -141), new(10, 141), Side.Above, 0);
        Assert.Equal("282", Assert.Single(Texts(across, Half)).Text);
        LinearDimension along = new(new(0, 7), new(488, 3), Side.Left, 10);
        Assert.Equal("488", Assert.Single(Texts(along, Half)).Text);
        LinearDimension ramp = new(new(0, 0), new(0, 1.5), Side.Left, 10);
        Assert.Equal("1.5", Assert.Single(Texts(ramp, Exaggerated)).Text);
        LinearDimension length = new(new(0, 0), new(325, 1.5), Side.Below, 10);
        Assert.Equal("325", Assert.Single(Texts(length, Exaggerated)).Text);
        AlignedDimension aligned = new(new(0, 0), new(30, 40), 5);
        Assert.Equal("50", Assert.Single(Texts(aligned, Exaggerated)).Text);
    }

    [Fact]
    public void Figure_stands_in_a_gap_of_its_line()
    {
        Ink ink = new();
        new LinearDimension(new(0, 0), new(100, 0), Side.Above, 20).Draw(ink, Placement.Identity);
        TextMark text = ink.Marks().OfType<TextMark>().Single();
        StrokeMark[] lines =
        [
            .. ink.Marks().OfType<StrokeMark>().Where(m => m.Style == LineStyle.Dimension),
        ];
        Assert.Equal(2, lines.Length);
        Assert.True(lines[0].Shape.End.X < text.Start.X - 0.5);
        Assert.True(lines[1].Shape.Start.X > text.Start.X + text.WidthMm + 0.5);
        // It is centred on the line.
        Assert.Equal(20, text.Start.Y + (text.Style.HeightMm / 2), 1e-9);
        Assert.Equal(50, text.Start.X + (text.WidthMm / 2), 1e-9);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(12)]
    public void Short_dimension_has_its_figure_outside(double length)
    {
        TextMark text = Assert.Single(
            Texts(new LinearDimension(new(0, 0), new(length, 0), Side.Above, 5), Placement.Identity)
        );
        Assert.True(text.Start.X > length + 1);
    }

    [Theory]
    [InlineData(100, 0, 0)]
    [InlineData(-100, 0, 0)]
    [InlineData(0, 100, 90)]
    [InlineData(0, -100, 90)]
    [InlineData(70, 70, 45)]
    [InlineData(-70, -70, 45)]
    [InlineData(-70, 70, -45)]
    public void Figures_are_read_from_below_or_from_the_right(double x, double y, double degrees)
    {
        TextMark text = Assert.Single(
            Texts(new AlignedDimension(new(0, 0), new(x, y), 8), Placement.Identity)
        );
        Assert.Equal(degrees, text.AngleRad * 180 / Math.PI, 1e-9);
    }

    [Fact]
    public void Dimension_of_nothing_is_a_flaw()
    {
        foreach (
            Item item in new Item[]
            {
                new LinearDimension(new(5, 5), new(5, 9), Side.Above, 3),
                new AlignedDimension(new(5, 5), new(5, 5), 3),
                new RadiusDimension(new(5, 5), 0, 0, 3),
                new DiameterDimension(new(5, 5), 0, new(3, 3)),
            }
        )
        {
            Ink ink = new();
            item.Draw(ink, Placement.Identity);
            Assert.Equal(SheetFlawKind.EmptyDimension, Assert.Single(ink.Flaws).Kind);
        }
    }

    [Fact]
    public void Ordinates_are_measured_from_the_datum_and_stand_apart()
    {
        OrdinateDimensions item = new(
            new(0, 0),
            [new(new(100, 20)), new(new(101, 20), "mark"), new(new(103, 25)), new(new(0, 0))],
            Side.Right,
            20
        );
        List<TextMark> texts = Texts(item, Half);
        Assert.Equal(
            ["0", "100", "101", "103", "mark"],
            texts.Select(t => t.Text).Order(StringComparer.Ordinal)
        );
        double[] heights =
        [
            .. texts.Where(t => t.Text != "mark").Select(t => t.Start.Y).OrderDescending(),
        ];
        for (int i = 1; i < heights.Length; i++)
        {
            Assert.True(heights[i - 1] - heights[i] >= 3.75 - 1e-9);
        }

        // From the datum at the top downwards.
        Assert.Equal("103", texts.Where(t => t.Text != "mark").MinBy(t => t.Start.Y)!.Text);
    }

    [Theory]
    [InlineData(488, 1, "488")]
    [InlineData(106.92, 1, "106.9")]
    [InlineData(0.25, 1, "0.3")]
    [InlineData(-0.01, 1, "0")]
    [InlineData(6.25, 2, "6.25")]
    [InlineData(1e5, 1, "100000")]
    public void Figures_have_no_more_decimals_than_they_need(
        double value,
        int decimals,
        string expected
    ) => Assert.Equal(expected, Figures.Mm(value, decimals));

    [Fact]
    public void Figures_follow_the_reader()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("es-ES");
            Assert.Equal("106,9", Figures.Mm(106.9));
            Assert.Equal("1,50", Figures.Fixed(1.5));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Figures.Mm(double.NaN));
    }
}
