using Xunit;

namespace Formwright.Curves.Tests;

public sealed class OutlineTests
{
    private static readonly Outline Circle = new(
        new Chain([new EulerSegment(Point.Origin, 0.5 * Math.PI, -1 / 100.0, 0, 100 * Math.PI)])
    );

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(199.99)]
    public void A_circle_has_its_widths(double u)
    {
        double wanted = 2 * Math.Sqrt((100 * 100) - ((u - 100) * (u - 100)));
        Assert.Equal(wanted, Circle.WidthAt(u), 1e-8);
    }

    [Fact]
    public void A_circle_has_its_area_table_and_turns()
    {
        Assert.Equal(1e4 * Math.PI, Circle.AreaMm2, 1e-8);
        Assert.Equal(100, Circle.CentroidUMm, 1e-10);
        Assert.Equal(200, Circle.BodyLengthMm, 1e-10);
        IReadOnlyList<OutlineRow> table = Circle.Table();
        Assert.Equal(21, table.Count);
        Assert.All(table, row => Assert.Equal(0.01, row.CurvaturePerMm, 1e-12));
        Assert.Equal(200, table[10].WidthMm, 1e-9);
        Assert.Equal(0, table[0].WidthMm, 1e-12);
        OutlineRow turn = Assert.Single(Circle.Turns);
        Assert.Equal(100, turn.UMm, 1e-9);
        Assert.Null(Circle.TightestHollow);
        Assert.Equal(0, Circle.WidthAt(-1));
        Assert.Equal(0, Circle.WidthAt(201));
    }

    [Fact]
    public void The_closed_chain_runs_counter_clockwise_over_the_bass_side_first()
    {
        Outline outline = Models.Of(Models.Heron);
        Chain closed = outline.Closed;
        Assert.True(closed.IsClosed);
        Assert.Equal(outline.AreaMm2, closed.SignedAreaMm2, 1e-6);
        Assert.Equal(2 * outline.HalfPerimeterMm, closed.LengthMm, 1e-9);
        Assert.Equal(2 * Math.PI, closed.TurningRad + closed.Joins.Sum(j => j.KinkRad), 1e-9);
        Assert.True(closed.At(100).Position.Y < 0);
        Assert.All(closed.Joins, join => Assert.Equal(0, join.KinkRad, 1e-9));
        Assert.All(closed.Joins, join => Assert.Equal(0, join.CurvatureStep, 1e-12));
    }

    [Fact]
    public void Inside_is_inside()
    {
        Outline outline = Models.Of(Models.Heron);
        Assert.True(outline.Contains(new(300, 150)));
        Assert.True(outline.Contains(new(300, -150)));
        Assert.False(outline.Contains(new(190, 118.5)));
        Assert.True(outline.Contains(new(190, 117.5)));
        Assert.False(outline.Contains(new(-1, 0)));
        Assert.False(outline.Contains(new(489, 0)));
    }

    [Fact]
    public void A_flat_is_a_width_at_its_station()
    {
        Outline outline = Models.Of(Models.Heron with { HeelFlatMm = 60, TailFlatMm = 40 });
        Assert.Equal(60, outline.WidthAt(0), 1e-9);
        Assert.Equal(40, outline.WidthAt(488), 1e-9);
        IReadOnlyList<OutlineRow> table = outline.Table();
        Assert.Equal(60, table[0].WidthMm, 1e-9);
        Assert.Equal(40, table[^1].WidthMm, 1e-9);
        Assert.Equal(50, table.Count);
    }

    [Fact]
    public void Refuses_half_an_outline_that_is_none()
    {
        EulerSegment arc = new(new(1, 0), 0.5 * Math.PI, -0.01, 0, 100 * Math.PI);
        Assert.Throws<ArgumentException>(() => new Outline(new Chain([arc])));
        Assert.Throws<ArgumentException>(() =>
            new Outline(new Chain([EulerSegment.Line(Point.Origin, new(100, 1))]))
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Circle.Table(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Circle.WidthAt(double.NaN));
    }
}
