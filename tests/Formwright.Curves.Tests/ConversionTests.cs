using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

public sealed class ConversionTests
{
    private static readonly Chain Heron = Models.Of(Models.Heron).Half;

    private static readonly Gen<double> Tolerances = Gen.Double[-3, -0.5]
        .Select(exponent => Math.Pow(10, exponent));

    [Fact]
    public void Stated_errors_hold_and_stay_within_the_tolerance() =>
        (from chain in Models.Chains from tolerance in Tolerances select (chain, tolerance)).Holds(
            given =>
            {
                (Chain chain, double tolerance) = given;
                Polyline line = chain.ToPolyline(tolerance);
                Held("line", chain, line.ErrorMm, tolerance, Places(line));
                ArcPath arcs = chain.ToArcs(tolerance);
                Held("arcs", chain, arcs.ErrorMm, tolerance, Places(arcs));
                Assert.True(arcs.KinkRad < 1e-7, $"{arcs.KinkRad}");
                BezierPath beziers = chain.ToBeziers(tolerance);
                Held("beziers", chain, beziers.ErrorMm, tolerance, Places(beziers));
            },
            iter: 60
        );

    [Fact]
    public void The_curve_too_stays_near_what_was_made_of_it() =>
        (from chain in Models.Chains from tolerance in Tolerances select (chain, tolerance)).Holds(
            given =>
            {
                (Chain chain, double tolerance) = given;
                ArcPiece[] arcs = [.. chain.ToArcs(tolerance).Pieces];
                Chain back = new(Chained(arcs));
                for (int i = 0; i <= 300; i++)
                {
                    Point place = chain.At(chain.LengthMm * i / 300).Position;
                    Assert.True(back.Nearest(place).DistanceMm <= (1.02 * tolerance) + 1e-6);
                }
            },
            iter: 40
        );

    [Fact]
    public void Mirrored_curves_give_mirrored_pieces() =>
        Models.Chains.Holds(
            chain =>
            {
                Chain mirrored = chain.Mirrored();
                Same(
                    chain.ToPolyline(0.01).Points.Select(p => new Point(p.X, -p.Y)),
                    mirrored.ToPolyline(0.01).Points
                );
                ArcPath arcs = chain.ToArcs(0.01);
                ArcPath other = mirrored.ToArcs(0.01);
                Same(
                    arcs.Vertices.Select(v => new Point(v.Position.X, -v.Position.Y)),
                    other.Vertices.Select(v => v.Position)
                );
                Assert.All(
                    arcs.Vertices.Zip(other.Vertices),
                    pair => Assert.Equal(pair.First.Bulge, -pair.Second.Bulge, 1e-6)
                );
                Same(
                    chain.ToBeziers(0.01).Pieces.Select(p => new Point(p.P1.X, -p.P1.Y)),
                    mirrored.ToBeziers(0.01).Pieces.Select(p => p.P1)
                );
            },
            iter: 30
        );

    [Fact]
    public void Reversed_moved_and_scaled_curves_give_reversed_moved_and_scaled_pieces() =>
        (
            from chain in Models.Chains
            from factor in Gen.Double[0.2, 5]
            select (chain, factor)
        ).Holds(
            given =>
            {
                (Chain chain, double factor) = given;
                ArcPath arcs = chain.ToArcs(0.01);
                Chain reversed = chain.Reversed();
                Same(
                    arcs.Vertices.Select(v => v.Position).Reverse(),
                    reversed.ToArcs(0.01).Vertices.Select(v => v.Position)
                );
                Same(chain.ToPolyline(0.01).Points.Reverse(), reversed.ToPolyline(0.01).Points);
                Vector step = new(40, -70);
                Same(
                    arcs.Vertices.Select(v => v.Position + step),
                    chain.Moved(step).ToArcs(0.01).Vertices.Select(v => v.Position)
                );
                Same(
                    arcs.Vertices.Select(v => new Point(
                        v.Position.X * factor,
                        v.Position.Y * factor
                    )),
                    chain.Scaled(factor).ToArcs(0.01 * factor).Vertices.Select(v => v.Position)
                );
            },
            iter: 30
        );

    [Fact]
    public void Arcs_and_lines_stay_what_they_are()
    {
        EulerSegment line = EulerSegment.Line(new(0, 0), new(100, 0));
        EulerSegment arc = new(new(100, 0), 0, 1 / 40.0, 0, 40);
        EulerSegment next = EulerSegment.Line(
            arc.End.Position,
            arc.End.Position + (arc.End.Tangent * 30)
        );
        Chain chain = new([line, arc, next]);
        ArcPath path = chain.ToArcs(0.01);
        Assert.Equal(4, path.Vertices.Count);
        Assert.Equal(0, path.Vertices[0].Bulge);
        // Bulge of DXF: tan of a quarter of the turning, here 1 rad to the left.
        Assert.Equal(Math.Tan(0.25), path.Vertices[1].Bulge, 1e-12);
        Assert.Equal(0, path.Vertices[2].Bulge);
        Assert.True(path.ErrorMm < 1e-9);
        ArcPiece piece = path.Pieces.ElementAt(1);
        Assert.Equal(40, piece.RadiusMm, 1e-9);
        Assert.True(piece.Centre.DistanceTo(new(100, 40)) < 1e-9);
        Assert.Equal(40, piece.LengthMm, 1e-9);
        Assert.Equal(4, chain.ToPolyline(10).Points.Count);
    }

    [Fact]
    public void A_circle_becomes_a_few_exact_arcs()
    {
        Chain circle = new([new EulerSegment(Point.Origin, 0, 0.01, 0, 200 * Math.PI)], true);
        ArcPath arcs = circle.ToArcs(0.01);
        Assert.InRange(arcs.Vertices.Count, 2, 4);
        Assert.True(arcs.ErrorMm < 1e-9);
        Assert.Equal(1e4 * Math.PI, arcs.SignedAreaMm2, 1e-6);
        Assert.Equal(200 * Math.PI, arcs.LengthMm, 1e-8);
        Polyline line = circle.ToPolyline(0.01);
        Assert.True(line.IsClosed);
        // A regular polygon of n sides misses its circle by R(1 - cos(π/n)).
        int n = line.Points.Count;
        Assert.Equal(100 * (1 - Math.Cos(Math.PI / n)), line.ErrorMm, 1e-4);
        Assert.InRange(n, 222, 240);
    }

    [Fact]
    public void A_square_keeps_its_corners()
    {
        Point[] corners = [new(0, 0), new(50, 0), new(50, 50), new(0, 50)];
        Chain square = new(
            Enumerable.Range(0, 4).Select(i => EulerSegment.Line(corners[i], corners[(i + 1) % 4])),
            true
        );
        Assert.Equal(corners, square.ToPolyline(0.1).Points);
        ArcPath arcs = square.ToArcs(0.1);
        Assert.Equal(corners, arcs.Vertices.Select(v => v.Position));
        Assert.Equal(0, arcs.KinkRad);
        Assert.Equal(4, square.ToBeziers(0.1).Pieces.Count);
    }

    [Theory]
    [InlineData(0.1, 30)]
    [InlineData(0.01, 60)]
    [InlineData(0.001, 130)]
    public void Few_arcs_serve_half_an_outline(double tolerance, int most)
    {
        ArcPath arcs = Heron.ToArcs(tolerance);
        Assert.InRange(arcs.Vertices.Count, 4, most);
        Assert.True(arcs.ErrorMm <= tolerance);
        Assert.Equal(Heron.SignedAreaMm2, arcs.SignedAreaMm2, Heron.LengthMm * tolerance);
    }

    /// <summary>A biarc misses a spiral by the third power of its length, so ten times as fine takes about ∛10 as many.</summary>
    [Fact]
    public void The_number_of_pieces_grows_as_theory_has_it()
    {
        double arcs = Ratio(t => Heron.ToArcs(t).Vertices.Count);
        double chords = Ratio(t => Heron.ToPolyline(t).Points.Count);
        Assert.InRange(arcs, 4.64 * 0.75, 4.64 * 1.3);
        Assert.InRange(chords, 10 * 0.85, 10 * 1.15);

        static double Ratio(Func<double, int> count) => count(1e-4) / (double)count(1e-2);
    }

    [Fact]
    public void Arc_pieces_measure_distance_and_length()
    {
        // Three quarters of a circle of radius 10 about (0, 10), from its foot round to the left.
        ArcPiece arc = new(new(0, 0), new(-10, 10), Math.Tan(1.5 * Math.PI / 4));
        Assert.Equal(10, arc.RadiusMm, 1e-12);
        Assert.True(arc.Centre.DistanceTo(new(0, 10)) < 1e-12);
        Assert.Equal(15 * Math.PI, arc.LengthMm, 1e-12);
        Assert.Equal(0, arc.StartAngle, 1e-12);
        Assert.True(arc.At(1.0 / 3).DistanceTo(new(10, 10)) < 1e-12);
        Assert.Equal(3, arc.DistanceFromCircle(new(13, 10)), 1e-12);
        Assert.Equal(10, arc.DistanceFromCircle(new(0, 10)), 1e-12);
        ArcPiece flat = new(new(0, 0), new(100, 0), 1e-12);
        Assert.Equal(2, flat.DistanceFromCircle(new(30, -2)), 1e-9);
        Assert.Equal(100, flat.LengthMm, 1e-9);
        Assert.True(arc.ToSegment().End.Position.DistanceTo(arc.To) < 1e-12);
    }

    [Fact]
    public void Refuses_a_tolerance_that_is_none()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Heron.ToPolyline(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Heron.ToArcs(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Heron.ToBeziers(double.NaN));
    }

    private static void Held(
        string kind,
        Chain chain,
        double error,
        double tolerance,
        IEnumerable<Point> places
    )
    {
        Assert.True(error <= tolerance, $"{error} > {tolerance}");
        double worst = places.Max(place => chain.Nearest(place).DistanceMm);
        Assert.True(worst <= (1.03 * error) + 1e-9, $"{kind}: stated {error}, found {worst}");
    }

    private static IEnumerable<Point> Places(Polyline line)
    {
        for (int i = 1; i < line.Points.Count; i++)
        {
            for (int k = 0; k < 8; k++)
            {
                yield return line.Points[i - 1].Towards(line.Points[i], k / 8.0);
            }
        }
    }

    private static IEnumerable<Point> Places(ArcPath arcs) =>
        arcs.Pieces.SelectMany(piece => Enumerable.Range(0, 25).Select(k => piece.At(k / 24.0)));

    private static IEnumerable<Point> Places(BezierPath path) =>
        path.Pieces.SelectMany(piece => Enumerable.Range(0, 60).Select(k => piece.At(k / 59.0)));

    private static IEnumerable<EulerSegment> Chained(ArcPiece[] pieces) =>
        pieces.Select(piece => piece.ToSegment());

    /// <summary>As many pieces, and cut at the same places within what rounding does to the balance of their errors.</summary>
    private static void Same(IEnumerable<Point> wanted, IEnumerable<Point> got)
    {
        Point[] a = [.. wanted];
        Point[] b = [.. got];
        Assert.InRange(b.Length, (0.95 * a.Length) - 2, (1.05 * a.Length) + 2);
        if (a.Length == b.Length)
        {
            Assert.All(a.Zip(b), pair => Assert.True(pair.First.DistanceTo(pair.Second) < 0.1));
        }
    }
}
