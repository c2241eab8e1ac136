using Formwright.Curves;

namespace Formwright.Drawing.Tests;

/// <summary>A view turns and scales; it never mirrors. Tried on an asymmetric part.</summary>
public sealed class ViewTests
{
    /// <summary>An L whose long leg runs along +x and whose short leg points to +y.</summary>
    private static readonly Shape L = Shape.Polyline(
        [new(0, 0), new(100, 0), new(100, 10), new(10, 10), new(10, 40), new(0, 40)],
        closed: true
    );

    private static double AreaOf(Shape shape)
    {
        IReadOnlyList<Point> p = shape.Flatten(0.01);
        double twice = 0;
        for (int i = 0; i < p.Count; i++)
        {
            Point next = p[(i + 1) % p.Count];
            twice += (p[i].X * next.Y) - (next.X * p[i].Y);
        }

        return twice / 2;
    }

    private static StrokeMark Drawn(View view)
    {
        Ink ink = new();
        view.Draw(ink, Placement.Identity);
        return ink.Marks().OfType<StrokeMark>().First(m => m.Layer == "outline");
    }

    private static View Of(ViewFrame frame) =>
        new([new Line(L, LineStyle.Outline)], frame) { At = new(200, 150) };

    [Theory]
    [InlineData(0)]
    [InlineData(View.NeckUp)]
    [InlineData(Math.PI)]
    [InlineData(0.7)]
    public void Turned_view_keeps_the_sense_of_the_part(double rotation)
    {
        View view = Of(ViewFrame.Front) with { RotationRad = rotation, Scale = 0.5 };
        Assert.Equal(AreaOf(L) / 4, AreaOf(Drawn(view).Shape), 1e-6);
    }

    [Fact]
    public void Neck_up_puts_y_to_the_right_and_x_downwards()
    {
        // design.md, section 3: on a page, right is y and up is -x.
        View view = Of(ViewFrame.Front) with
        {
            RotationRad = View.NeckUp,
        };
        Assert.Equal(new Point(240, 150), view.Placement.Apply(new(0, 40)));
        Assert.Equal(new Point(200, 50), view.Placement.Apply(new(100, 0)));
    }

    [Fact]
    public void Only_a_mirrored_template_mirrors_and_it_says_so()
    {
        View view = Of(ViewFrame.Part) with { MirroredTemplate = true };
        Assert.True(AreaOf(Drawn(view).Shape) < 0);
        Ink ink = new();
        view.Draw(ink, Placement.Identity);
        Assert.Contains(
            ink.Marks().OfType<TextMark>(),
            t => t.Text.Contains("mirrored template", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(ViewFrame.Front, true)]
    [InlineData(ViewFrame.Workboard, false)]
    public void Bass_is_left_on_the_front_and_right_on_the_workboard(ViewFrame frame, bool left)
    {
        View view = new([new BassTreble(frame, 50, 30)], frame)
        {
            RotationRad = View.NeckUp,
            At = new(200, 150),
        };
        Ink ink = new();
        view.Draw(ink, Placement.Identity);
        double bass = ink.Marks().OfType<TextMark>().Single(t => t.Text == "bass").Start.X;
        Assert.Equal(left, bass < 195);
        Assert.Equal(!left, bass > 205);
    }

    [Theory]
    [InlineData(1, 1, "full size")]
    [InlineData(0.5, 1, "1:2")]
    [InlineData(2, 1, "2:1")]
    [InlineData(0.4, 1, "1:2.5")]
    [InlineData(1, 12, "lengths full size · heights 12 times true")]
    public void Label_says_the_scale(double scale, double heights, string expected)
    {
        View view = Of(ViewFrame.SideView) with { Scale = scale, Heights = heights };
        Ink ink = new();
        view.Draw(ink, Placement.Identity);
        Assert.Contains(ink.Marks().OfType<TextMark>(), t => t.Text == expected);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Impossible_scales_throw(double scale)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(ViewFrame.Part) with { Scale = scale });
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Of(ViewFrame.Part) with
            {
                Heights = scale,
            }
        );
    }

    [Fact]
    public void Fitted_view_takes_the_largest_scale_that_fits()
    {
        Box area = Box.Of(20, 20, 190, 120);
        View view = Of(ViewFrame.Part).FittedIn(area);
        Assert.Equal(1, view.Scale);
        Assert.True(area.Holds(view.Bounds()));
        View large = new View([
            new Line(Shape.Rectangle(Box.Of(0, 0, 900, 300)), LineStyle.Outline),
        ]).FittedIn(area);
        Assert.Equal(0.1, large.Scale);
        Assert.True(area.Holds(large.Bounds()));
    }
}
