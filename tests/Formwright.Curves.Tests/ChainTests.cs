using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

public sealed class ChainTests
{
    private static readonly Chain Circle = new(
        [
            new EulerSegment(new(50, 0), 0.5 * Math.PI, 1 / 50.0, 0, 100),
            .. new[]
            {
                new EulerSegment(new(50, 0), 0.5 * Math.PI, 1 / 50.0, 0, 100 * Math.PI).Part(
                    100,
                    100 * Math.PI
                ),
            },
        ],
        isClosed: true
    );

    [Fact]
    public void A_circle_has_its_area_centroid_box_and_radius()
    {
        Assert.Equal(100 * Math.PI, Circle.LengthMm, 1e-12);
        Assert.Equal(2500 * Math.PI, Circle.SignedAreaMm2, 1e-8);
        Assert.True(Circle.Centroid.DistanceTo(Point.Origin) < 1e-10);
        Assert.Equal(2 * Math.PI, Circle.TurningRad, 1e-12);
        Assert.Equal(-50, Circle.Box.Min.X, 1e-10);
        Assert.Equal(50, Circle.Box.Max.Y, 1e-10);
        Assert.Equal(50, Circle.TightestLeft!.Value.Curve.RadiusMm, 1e-10);
        Assert.Null(Circle.TightestRight);
        Assert.Single(Circle.CurvaturePieces());
        Assert.Equal(2, Circle.CrossingsAtX(30).Count);
        Assert.Equal(40, Math.Abs(Circle.CrossingsAtX(30)[0].Position.Y), 1e-10);
        Assert.Equal(2, Circle.CrossingsAtY(-14).Count);
        Assert.Empty(Circle.CrossingsAtX(50.001));
        Assert.Equal(
            [0.25, 0.75],
            Circle.TangentsAlong(0).Select(p => p.ArcLengthMm / Circle.LengthMm),
            (a, b) => Math.Abs(a - b) < 1e-12
        );
    }

    [Fact]
    public void The_nearest_place_of_a_circle_is_on_the_ray()
    {
        NearestPoint outside = Circle.Nearest(new(-80, 60));
        Assert.Equal(50, outside.DistanceMm, 1e-10);
        Assert.False(outside.IsLeft);
        Assert.True(outside.Foot.Position.DistanceTo(new(-40, 30)) < 1e-9);
        NearestPoint inside = Circle.Nearest(new(4, -3));
        Assert.Equal(45, inside.SignedDistanceMm, 1e-10);
        Assert.Equal(50, Circle.Nearest(Point.Origin).DistanceMm, 1e-10);
    }

    [Fact]
    public void The_nearest_place_is_nearest() =>
        (
            from chain in Models.Chains
            from x in Gen.Double[-150, 300]
            from y in Gen.Double[-200, 200]
            select (chain, place: new Point(x, y))
        ).Holds(
            given =>
            {
                NearestPoint found = given.chain.Nearest(given.place);
                Assert.Equal(found.DistanceMm, found.Foot.Position.DistanceTo(given.place), 1e-9);
                Assert.True(
                    given.chain.At(found.Foot.ArcLengthMm).Position.DistanceTo(found.Foot.Position)
                        < 1e-9
                );
                double least = Enumerable
                    .Range(0, 801)
                    .Min(i =>
                        given
                            .chain.At(given.chain.LengthMm * i / 800)
                            .Position.DistanceTo(given.place)
                    );
                Assert.True(found.DistanceMm <= least + 1e-9);
            },
            iter: 300
        );

    [Fact]
    public void A_closed_outline_has_the_pieces_of_both_halves()
    {
        Chain closed = Models.Of(Models.Heron).Closed;
        IReadOnlyList<CurvaturePiece> pieces = closed.CurvaturePieces();
        Assert.Equal(8, pieces.Count);
        Assert.Equal(closed.LengthMm, pieces[^1].ToMm - pieces[0].FromMm, 1e-9);
        Assert.Equal(closed.TightestLeft!.Value.Curve.Curvature, pieces[0].FromCurvature, 1e-12);
        for (int i = 1; i < pieces.Count; i++)
        {
            Assert.Equal(pieces[i - 1].ToMm, pieces[i].FromMm);
        }
    }

    [Fact]
    public void The_box_touches_and_holds() =>
        Models.Chains.Holds(
            chain =>
            {
                Box sampled = Box.Empty;
                for (int i = 0; i <= 4000; i++)
                {
                    sampled = sampled.With(chain.At(chain.LengthMm * i / 4000).Position);
                }

                Box grown = chain.Box.Grown(1e-9);
                Assert.True(grown.Contains(sampled.Min) && grown.Contains(sampled.Max));
                // A sample is at most 0.07 mm from an extreme, along which the curve bends away by less than 1e-4.
                Assert.True(sampled.Min.DistanceTo(chain.Box.Min) < 1e-3);
                Assert.True(sampled.Max.DistanceTo(chain.Box.Max) < 1e-3);
            },
            iter: 60
        );

    [Fact]
    public void Symmetry_matrix() =>
        (
            from chain in Models.Chains
            from share in Gen.Double[0, 1]
            from turn in Gen.Double[-3, 3]
            from factor in Gen.Double[0.1, 10]
            from x in Gen.Double[-99, 99]
            select (chain, share, turn, factor, x)
        ).Holds(
            given =>
            {
                (Chain chain, double share, double turn, double factor, double x) = given;
                double s = share * chain.LengthMm;
                CurvePoint at = chain.At(s);
                Point p = at.Position;

                Chain mirrored = chain.Mirrored();
                EulerSegmentTests.Close(
                    new(new(p.X, -p.Y), -at.Angle, -at.Curvature),
                    mirrored.At(s),
                    1e-9
                );
                Assert.Equal(chain.SignedAreaMm2, -mirrored.SignedAreaMm2, 1e-6);

                Chain reversed = chain.Reversed();
                EulerSegmentTests.Close(
                    new(p, at.Angle + Math.PI, -at.Curvature),
                    reversed.At(chain.LengthMm - s),
                    1e-9
                );
                Assert.Equal(chain.SignedAreaMm2, -reversed.SignedAreaMm2, 1e-6);

                Chain moved = chain.Moved(new(x, -2 * x));
                EulerSegmentTests.Close(
                    at with
                    {
                        Position = new(p.X + x, p.Y - (2 * x)),
                    },
                    moved.At(s),
                    1e-9
                );
                Assert.True(
                    Math.Abs(chain.SignedAreaMm2) < 1
                        || moved.Centroid.DistanceTo(chain.Centroid + new Vector(x, -2 * x))
                            < 1e-6 * (1 + chain.Centroid.DistanceTo(Point.Origin))
                );

                Chain rotated = chain.Rotated(turn);
                EulerSegmentTests.Close(
                    new(
                        Point.Origin + (p - Point.Origin).Turned(turn),
                        at.Angle + turn,
                        at.Curvature
                    ),
                    rotated.At(s),
                    1e-9
                );
                Assert.Equal(chain.SignedAreaMm2, rotated.SignedAreaMm2, 1e-6);

                Chain scaled = chain.Scaled(factor);
                EulerSegmentTests.Close(
                    new(new(p.X * factor, p.Y * factor), at.Angle, at.Curvature / factor),
                    scaled.At(s * factor),
                    1e-8
                );
                Assert.Equal(chain.SignedAreaMm2, scaled.SignedAreaMm2 / (factor * factor), 1e-6);
            },
            iter: 200
        );

    [Fact]
    public void Parts_and_splits_lie_on_the_chain() =>
        (
            from chain in Models.Chains
            from share in Gen.Double[0.05, 0.95]
            select (chain, share)
        ).Holds(
            given =>
            {
                (Chain chain, double share) = given;
                double cut = share * chain.LengthMm;
                (Chain before, Chain after) = chain.Split(cut);
                Assert.Equal(chain.LengthMm, before.LengthMm + after.LengthMm, 1e-9);
                EulerSegmentTests.Close(chain.At(cut * 0.5), before.At(cut * 0.5), 1e-9);
                EulerSegmentTests.Close(
                    chain.At(cut + (0.5 * after.LengthMm)),
                    after.At(0.5 * after.LengthMm),
                    1e-9
                );
                Chain again = before.FollowedBy(after);
                EulerSegmentTests.Close(chain.End, again.End, 1e-9);
            },
            iter: 200
        );

    [Fact]
    public void Sampling_many_places_is_asking_for_each() =>
        (
            from chain in Models.Chains
            from shares in Gen.Double[0, 1].Array[1, 50]
            select (chain, shares)
        ).Holds(
            given =>
            {
                double[] s = [.. given.shares.Select(share => share * given.chain.LengthMm)];
                CurvePoint[] places = new CurvePoint[s.Length];
                foreach (double[] order in new[] { s, [.. s.Order()] })
                {
                    given.chain.Sample(order, places);
                    Assert.All(
                        order.Zip(places),
                        pair =>
                            EulerSegmentTests.Close(given.chain.At(pair.First), pair.Second, 1e-9)
                    );
                }
            },
            iter: 100
        );

    [Fact]
    public void A_part_of_a_closed_chain_may_run_over_its_start()
    {
        Chain part = Circle.Part(300, 20);
        Assert.Equal((100 * Math.PI) - 280, part.LengthMm, 1e-9);
        Assert.True(part.Start.Position.DistanceTo(Circle.At(300).Position) < 1e-9);
        Assert.True(part.End.Position.DistanceTo(Circle.At(20).Position) < 1e-9);
        Assert.True(
            Circle.At(-10).Position.DistanceTo(Circle.At(Circle.LengthMm - 10).Position) < 1e-9
        );
    }

    [Fact]
    public void Curvature_pieces_are_monotone_runs_and_small_ripples_are_merged()
    {
        double[] kappa = [0.01, 0.02, 0.0199, 0.03, -0.01, -0.0101, 0.0, 0.0];
        List<EulerSegment> segments = [];
        Point at = Point.Origin;
        double angle = 0;
        for (int i = 1; i < kappa.Length; i++)
        {
            EulerSegment segment = new(at, angle, kappa[i - 1], (kappa[i] - kappa[i - 1]) / 10, 10);
            segments.Add(segment);
            (at, angle) = (segment.End.Position, segment.EndAngle);
        }

        Chain chain = new(segments);
        IReadOnlyList<CurvaturePiece> pieces = chain.CurvaturePieces(0.01);
        Assert.Equal([0.0, 30, 50], pieces.Select(p => p.FromMm));
        Assert.Equal([30.0, 50, 70], pieces.Select(p => p.ToMm));
        Assert.Equal(0.03, pieces[1].FromCurvature, 1e-15);
        // With hardly any tolerance the ripples count: up, down, up, down, up.
        Assert.Equal(5, chain.CurvaturePieces(1e-6).Count);
    }

    [Fact]
    public void Joins_say_what_is_continuous()
    {
        EulerSegment line = EulerSegment.Line(new(0, 0), new(10, 0));
        EulerSegment arc = new(new(10, 0), 0, 0.1, 0, 5);
        EulerSegment off = EulerSegment.Line(arc.End.Position, arc.End.Position + new Vector(0, 5));
        IReadOnlyList<ChainJoin> joins = new Chain([line, arc, off]).Joins;
        Assert.Equal(0, joins[0].KinkRad, 1e-15);
        Assert.Equal(0.1, joins[0].CurvatureStep, 1e-15);
        Assert.Equal((0.5 * Math.PI) - 0.5, joins[1].KinkRad, 1e-12);
    }

    /// <summary>
    /// A chain that takes an ellipse's curvature at n places of equal parameter closes and encloses πab as n grows, with second order: the curvature
    /// between the places is off by O(h²). Perimeter of semi-axes (10, 6): 51.0539977268 (complete elliptic integral, computed).
    /// </summary>
    [Fact]
    public void An_ellipse_is_approached_with_second_order()
    {
        double[] misses = [.. new[] { 50, 100, 200 }.Select(n => EllipseMiss(n, 10, 6))];
        Assert.InRange(Math.Log2(misses[0] / misses[1]), 1.8, 2.2);
        Assert.InRange(Math.Log2(misses[1] / misses[2]), 1.8, 2.2);

        static double EllipseMiss(int n, double a, double b)
        {
            const int Fine = 200;
            List<EulerSegment> segments = [];
            Point at = new(a, 0);
            double angle = 0.5 * Math.PI;
            for (int i = 0; i < n; i++)
            {
                double from = 0.5 * Math.PI * i / n;
                double to = 0.5 * Math.PI * (i + 1) / n;
                double length = 0;
                for (int k = 0; k < Fine; k++)
                {
                    length += Speed(from + ((to - from) * (k + 0.5) / Fine)) * (to - from) / Fine;
                }

                double kappa = a * b / Math.Pow(Speed(from), 3);
                double next = a * b / Math.Pow(Speed(to), 3);
                EulerSegment segment = new(at, angle, kappa, (next - kappa) / length, length);
                segments.Add(segment);
                (at, angle) = (segment.End.Position, segment.EndAngle);
            }

            Chain quarter = new(segments);
            Assert.Equal(51.0539977268, 4 * quarter.LengthMm, 1e-4);
            return at.DistanceTo(new(0, b));

            double Speed(double t) =>
                Math.Sqrt(Math.Pow(a * Math.Sin(t), 2) + Math.Pow(b * Math.Cos(t), 2));
        }
    }

    [Fact]
    public void Refuses_gaps_and_nothing()
    {
        Assert.Throws<ArgumentException>(() => new Chain([]));
        EulerSegment line = EulerSegment.Line(new(0, 0), new(10, 0));
        Assert.Throws<ArgumentException>(() => new Chain([line, line]));
        Assert.Throws<ArgumentException>(() => new Chain([line], isClosed: true));
        Chain chain = new([line]);
        Assert.Throws<ArgumentOutOfRangeException>(() => chain.At(11));
        Assert.Throws<ArgumentOutOfRangeException>(() => chain.At(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => chain.Part(5, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => chain.Nearest(new(double.NaN, 0)));
    }
}
