using CsCheck;
using Formwright.Curves;
using Formwright.Testing;
using Xunit;

namespace Formwright.Fields.Tests;

public sealed class RegionTests
{
    [Fact]
    public void Area_perimeter_and_bounds_are_those_of_the_loops()
    {
        Region ring = Shapes.Annulus(50, 150, new(3, 4));
        // Inscribed polygons: π r² and 2π r less a share (2π/n)²/6 or a fourth of that.
        Assert.Equal(Math.PI * ((150 * 150) - (50 * 50)), ring.AreaMm2, 2e-3);
        Assert.Equal(2 * Math.PI * 200, ring.PerimeterMm, 1e-4);
        Assert.Equal(-147, ring.Bounds.Min.X, 1e-4);
        Assert.Equal(154, ring.Bounds.Max.Y, 1e-4);
    }

    [Fact]
    public void Loops_come_out_counter_clockwise_outside_and_clockwise_in_holes()
    {
        Point[] outer = [new(0, 0), new(0, 10), new(10, 10), new(10, 0)];
        Point[] hole = [new(2, 2), new(8, 2), new(8, 8), new(2, 8)];
        Point[] island = [new(4, 4), new(4, 6), new(6, 6), new(6, 4)];
        Region region = Region.OfLoops([outer, hole, island]);
        Assert.Equal(100 - 36 + 4, region.AreaMm2, 1e-12);
        Assert.Equal(outer.Reverse(), region.Loops[0]);
        Assert.Equal(hole.Reverse(), region.Loops[1]);
        Assert.Equal(island.Reverse(), region.Loops[2]);
        Assert.True(region.Contains(new(1, 5)));
        Assert.False(region.Contains(new(3, 5)));
        Assert.True(region.Contains(new(5, 5)));
        Assert.False(region.Contains(new(11, 5)));
        Assert.False(region.Contains(new(double.NaN, 5)));
        Assert.False(region.Contains(new(5, double.NaN)));
    }

    [Fact]
    public void Inside_is_told_as_by_the_winding_of_the_angle()
    {
        Gen.Select(Gen.Double[0.1, 1].Array[3, 200], Gen.Double[-1.2, 1.2], Gen.Double[-1.2, 1.2])
            .Holds(
                (radii, x, y) =>
                {
                    Point[] loop =
                    [
                        .. radii.Select(
                            (r, i) => Point.Origin + (r * Vector.At(2 * Math.PI * i / radii.Length))
                        ),
                    ];
                    Point place = new(x, y);
                    // Independent: the angle that the loop sweeps as seen from the place.
                    double swept = 0;
                    for (int i = 0; i < loop.Length; i++)
                    {
                        Vector a = loop[i] - place;
                        Vector b = loop[(i + 1) % loop.Length] - place;
                        // Within rounding of the edge either answer is right.
                        if (a.Length < 1e-9 || Math.Abs(a.Cross(b)) < 1e-9 * (b - a).Length)
                        {
                            return;
                        }
                        swept += Math.Atan2(a.Cross(b), a.Dot(b));
                    }
                    Assert.Equal(Math.Abs(swept) > 3, Region.Of(loop).Contains(place));
                },
                iter: 2000
            );
    }

    [Theory]
    [InlineData(-140)]
    [InlineData(-30.5)]
    [InlineData(0)]
    [InlineData(100)]
    public void A_cut_disc_is_a_segment(double x)
    {
        // Segment of a circle: r² acos(x/r) - x √(r² - x²).
        Region part = Shapes.Ellipse(150, 150, points: 60_000).BeyondX(x);
        double expected = (150 * 150 * Math.Acos(x / 150)) - (x * Math.Sqrt((150 * 150) - (x * x)));
        Assert.Equal(expected, part.AreaMm2, 1e-3);
        Assert.Equal(x, part.Bounds.Min.X, 1e-12);
        Assert.True(part.Contains(new(x + 0.01, 0)));
        Assert.False(part.Contains(new(x - 0.01, 0)));
    }

    [Fact]
    public void A_cut_may_fall_into_parts_and_through_a_hole()
    {
        // A fork with two prongs towards +x and a hole at its root.
        Region fork = Region.OfLoops([
            [
                new(0, 0),
                new(10, 0),
                new(10, 2),
                new(4, 2),
                new(4, 6),
                new(10, 6),
                new(10, 8),
                new(0, 8),
            ],
            [new(1, 3), new(1, 5), new(3, 5), new(3, 3)],
        ]);
        Region prongs = fork.BeyondX(5);
        Assert.Equal(2, prongs.Loops.Count);
        Assert.Equal(20, prongs.AreaMm2, 1e-12);
        Region throughHole = fork.BeyondX(2);
        Assert.Equal((8 * 2) - 2 + (2 * 6 * 2), throughHole.AreaMm2, 1e-12);
        Assert.Single(throughHole.Loops);
        Assert.Equal(fork.AreaMm2, fork.BeyondX(-1).AreaMm2);
        // Along an edge that lies on the line itself.
        Assert.Equal((10 - 4) * 2 * 2, fork.BeyondX(4).AreaMm2, 1e-12);
    }

    [Fact]
    public void Two_parts_of_a_cut_add_up()
    {
        Region body = Shapes.Guitar(0);
        Region mirrored = Region.Of([.. body.Loops[0].Select(p => new Point(-p.X, p.Y))]);
        foreach (double x in new[] { 30, 106, 190, 215.7, 356, 470 })
        {
            Assert.Equal(
                body.AreaMm2,
                body.BeyondX(x).AreaMm2 + mirrored.BeyondX(-x).AreaMm2,
                1e-6
            );
        }
    }

    [Fact]
    public void What_is_no_region_is_refused()
    {
        Point[] square = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];
        Assert.Throws<ArgumentNullException>(() => Region.Of(null!));
        Assert.Throws<ArgumentException>(() => Region.OfLoops([]));
        Assert.Throws<ArgumentException>(() => Region.Of([]));
        Assert.Throws<ArgumentException>(() => Region.Of([new(0, 0), new(1, 0), new(0, 0)]));
        Assert.Throws<ArgumentException>(() => Region.Of([new(0, 0), new(1, 1), new(2, 2)]));
        Assert.Throws<ArgumentException>(() => Region.Of([.. square, new(double.NaN, 0.5)]));
        Assert.Throws<ArgumentException>(() => Region.Of([.. square, new(-1e308, 0.5)]));
        Assert.Throws<ArgumentException>(() =>
            Region.Of([.. square, new(0.5, double.PositiveInfinity)])
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Region.Of(square, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Region.Of(square, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Region.Of(square).BeyondX(double.NaN));
        Assert.Throws<ArgumentException>(() => Region.Of(square).BeyondX(2));
        // A bow tie, a spike that folds back, two loops that cross, two that touch.
        Assert.Throws<ArgumentException>(() =>
            Region.Of([new(0, 0), new(2, 2), new(2, 0), new(0, 2)])
        );
        Assert.Throws<ArgumentException>(() =>
            Region.Of([new(0, 0), new(2, 0), new(1, 0), new(1, 2)])
        );
        Assert.Throws<ArgumentException>(() =>
            Region.OfLoops([square, [new(0.5, 0.5), new(1.5, 0.5), new(1, 2)]])
        );
        Assert.Throws<ArgumentException>(() =>
            Region.OfLoops([square, [new(1, 0.5), new(2, 0), new(2, 1)]])
        );
    }

    [Fact]
    public void A_crossing_is_said_where_it_is()
    {
        Point[] loop = [.. Shapes.Guitar(0).Loops[0]];
        // One corner pushed across the waist.
        loop[700] = new(loop[700].X, -300 * Math.Sign(loop[700].Y));
        ArgumentException error = Assert.Throws<ArgumentException>(() => Region.Of(loop));
        Assert.Contains("crosses itself near", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dense_straight_side_is_no_crossing()
    {
        Point[] Side(Point a, Point b) =>
            [.. Enumerable.Range(0, 500).Select(i => a.Towards(b, i / 500.0))];
        Point[] corners = [new(0, 0), new(300, 0), new(310, 200), new(0, 200)];
        Region region = Region.Of([
            .. Enumerable.Range(0, 4).SelectMany(i => Side(corners[i], corners[(i + 1) % 4])),
        ]);
        Assert.Equal(61_000, region.AreaMm2, 1e-6);
    }
}
