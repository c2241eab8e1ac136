using Xunit;

namespace Formwright.Curves.Tests;

public class CurvaturePlotTests
{
    [Fact]
    public void A_half_circle_is_one_piece_of_even_curvature()
    {
        CurvaturePlot plot = new([100 * Math.PI], [-0.01, -0.01]);
        Outline outline = Assert.IsType<Outline>(plot.ToOutline());
        Assert.Equal(200, outline.BodyLengthMm, 9);
        Assert.Equal(10_000 * Math.PI, outline.AreaMm2, 6);
    }

    [Fact]
    public void Rounded_figures_are_closed_again_with_next_to_no_change()
    {
        Outline heron = MinimumVariation
            .Solve(new OutlineFeatures(488, new(104, 282), new(190, 236), new(356, 368)), 1)
            .Outline!;
        CurvaturePlot exact = CurvaturePlot.Of(heron);
        CurvaturePlot rounded = new(
            [.. exact.LengthsMm.Select(each => Math.Round(each, 3))],
            [.. exact.Curvatures.Select(each => Math.Round(each, 7))]
        );
        Assert.Null(rounded.ToOutline());
        Outline closed = Assert.IsType<Outline>(rounded.Closed(mostMm: 1)?.ToOutline());
        Assert.Equal(-0.5 * Math.PI, closed.Half.End.Angle, 11);
        for (double s = 0; s < closed.HalfPerimeterMm; s += 7)
        {
            Assert.InRange(heron.Half.Nearest(closed.Half.At(s).Position).DistanceMm, 0, 0.02);
        }
    }

    [Fact]
    public void A_plot_that_ends_elsewhere_is_not_closed()
    {
        CurvaturePlot straight = new([300], [0, 0]);
        Assert.Null(straight.Closed(mostMm: 1));
        Assert.Null(straight.ToOutline());
    }

    [Fact]
    public void Counts_and_figures_are_checked()
    {
        Assert.Throws<ArgumentException>(() => new CurvaturePlot([1], [0]));
        Assert.Throws<ArgumentException>(() => new CurvaturePlot([], [0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CurvaturePlot([0], [0, 0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CurvaturePlot([1], [0, double.NaN]));
    }
}
