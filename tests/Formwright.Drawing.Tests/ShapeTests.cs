using CsCheck;
using Formwright.Curves;
using Formwright.Testing;

namespace Formwright.Drawing.Tests;

public sealed class ShapeTests
{
    private static readonly Gen<Point> Places = Gen.Select(
            Gen.Double[-300, 300],
            Gen.Double[-300, 300]
        )
        .Select((x, y) => new Point(x, y));

    private static readonly Gen<Segment> Pieces = Gen.OneOf(
        Places.Select(end => (Segment)new LineSegment(end)),
        Gen.Select(Places, Gen.Double[-3, 3]).Select((e, b) => (Segment)new ArcSegment(e, b)),
        Gen.Select(Places, Places, Places).Select((c, d, e) => (Segment)new CubicSegment(c, d, e))
    );

    private static readonly Gen<Shape> Shapes = Gen.Select(Places, Pieces.Array[1, 6], Gen.Bool)
        .Select((start, pieces, closed) => new Shape(start, pieces, closed));

    [Fact]
    public void Quarter_circle_has_its_centre_radius_and_sweep()
    {
        // tan(90°/4), from (10, 0) to (0, 10) to the left: about the origin.
        ArcGeometry arc = ArcGeometry.Of(
            new(10, 0),
            new ArcSegment(new(0, 10), Math.Tan(Math.PI / 8))
        );
        Assert.Equal(0, arc.Centre.DistanceTo(new(0, 0)), 1e-12);
        Assert.Equal(10, arc.RadiusMm, 1e-12);
        Assert.Equal(0, arc.FromRad, 1e-12);
        Assert.Equal(Math.PI / 2, arc.SweepRad, 1e-12);
    }

    [Fact]
    public void Arc_of_more_than_half_a_turn_runs_the_long_way()
    {
        // θ = 270°: bulge tan(67.5°) = 1 + √2.
        ArcGeometry arc = ArcGeometry.Of(new(10, 0), new ArcSegment(new(0, -10), 1 + Math.Sqrt(2)));
        Assert.Equal(0, arc.Centre.DistanceTo(new(0, 0)), 1e-12);
        Assert.Equal(1.5 * Math.PI, arc.SweepRad, 1e-12);
    }

    [Fact]
    public void Cubics_of_an_arc_stay_near_it()
    {
        Shape circle = Shape.Circle(new(3, 4), 100);
        double worst = 0;
        Point at = circle.Start;
        foreach (ArcSegment arc in circle.Segments.Cast<ArcSegment>())
        {
            foreach (CubicSegment c in ArcGeometry.Of(at, arc).Cubics())
            {
                CubicBezier curve = new(at, c.Control1, c.Control2, c.End);
                for (double t = 0; t <= 1; t += 0.01)
                {
                    worst = Math.Max(worst, Math.Abs(curve.At(t).DistanceTo(new(3, 4)) - 100));
                }

                at = c.End;
            }
        }

        Assert.InRange(worst, 4.2e-4, 4.3e-4);
    }

    [Fact]
    public void Chords_stay_within_the_tolerance() =>
        Gen.Select(Shapes, Gen.Double[0.005, 2])
            .Holds(
                (shape, tolerance) =>
                {
                    IReadOnlyList<Point> coarse = shape.Flatten(tolerance);
                    return shape
                        .Flatten(0.0005)
                        .Where((_, i) => i % 23 == 0)
                        .All(p => DistanceTo(coarse, p) <= tolerance * 1.001 + 0.001);
                },
                iter: 100
            );

    [Fact]
    public void Bounds_are_those_of_a_dense_polyline() =>
        Shapes.Holds(
            shape =>
            {
                Box box = shape.Bounds();
                Box dense = shape
                    .Flatten(0.0005)
                    .Aggregate(Box.Empty, static (all, point) => all.With(point));
                return box.Grown(1e-9).Holds(dense) && dense.Grown(0.001).Holds(box);
            },
            iter: 500
        );

    /// <summary>An arc that rises by 0.0011 mm over 257 mm was one chord at a tolerance of half of that.</summary>
    [Fact]
    public void A_flat_arc_is_cut_as_finely_as_its_rise_asks_for()
    {
        ArcSegment arc = new(new(257.0911, 0), 8.398e-6);
        double rise = 0.5 * 257.0911 * arc.Bulge;
        Shape shape = new(new(0, 0), [arc], false);
        Assert.Equal(2, shape.Flatten(1.001 * rise).Count);
        Assert.Equal(3, shape.Flatten(rise / 3.9).Count);
        Assert.Equal(rise, -shape.Flatten(rise / 3.9)[1].Y, 1e-8);
    }

    [Fact]
    public void Placed_shape_is_the_shape_of_the_placed_points() =>
        Gen.Select(Shapes, Gen.Double[0.1, 3], Gen.Double[-3, 3], Gen.Double[0.2, 12], Gen.Bool)
            .Holds(
                (shape, scale, turn, heights, mirrored) =>
                {
                    foreach (double h in new[] { 1, heights })
                    {
                        Placement placement = Placement.Of(
                            new(20, 30),
                            new(5, 6),
                            scale,
                            turn,
                            h,
                            mirrored
                        );
                        IReadOnlyList<Point> placed = shape.Placed(placement).Flatten(0.01);
                        bool on = shape
                            .Flatten(0.005)
                            .Where((_, i) => i % 17 == 0)
                            .All(p =>
                                DistanceTo(placed, placement.Apply(p)) < 0.1 * h * scale + 0.02
                            );
                        if (!on)
                        {
                            return false;
                        }
                    }

                    return true;
                },
                iter: 100
            );

    [Fact]
    public void Figures_that_are_not_finite_throw()
    {
        Assert.Throws<ArgumentException>(() => Shape.Line(new(0, 0), new(double.NaN, 1)));
        Assert.Throws<ArgumentException>(() =>
            new Shape(new(0, 0), [new ArcSegment(new(1, 1), double.PositiveInfinity)])
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Shape.Circle(new(0, 0), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shape.Circle(new(0, 0), 1).Flatten(-1));
        Assert.Throws<ArgumentException>(() => Shape.Polyline([]));
    }

    [Fact]
    public void Converted_curves_keep_their_pieces()
    {
        ArcPath arcs = new(
            [new(new(0, 0), 0), new(new(10, 0), 1), new(new(10, 10), 0)],
            IsClosed: true,
            0,
            0
        );
        Shape shape = Shape.Of(arcs);
        Assert.True(shape.Closed);
        Assert.Equal(3, shape.Segments.Count);
        Assert.Equal(new ArcSegment(new(10, 10), 1), shape.Segments[1]);
        Assert.Equal(new(0, 0), shape.End);
    }

    /// <summary>Distance of a point from a polyline, by brute force.</summary>
    private static double DistanceTo(IReadOnlyList<Point> line, Point p)
    {
        double least = line[0].DistanceTo(p);
        for (int i = 0; i + 1 < line.Count; i++)
        {
            Vector d = line[i + 1] - line[i];
            double square = d.Dot(d);
            double t = square == 0 ? 0 : Math.Clamp((p - line[i]).Dot(d) / square, 0, 1);
            least = Math.Min(least, (line[i] + (t * d)).DistanceTo(p));
        }

        return least;
    }
}
