using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

public sealed class EulerSegmentTests
{
    private static readonly Gen<double> Small = Gen.Int[0, 3]
        .Select(i => new[] { 1, 1e-5, 1e-11, 0 }[i]);

    /// <summary>
    /// Fresnel integrals C, S with argument πt²/2. Values: Abramowitz &amp; Stegun, Handbook of Mathematical Functions, table 7.7,
    /// computed to more digits; half of the last printed digit is allowed.
    /// </summary>
    [Theory]
    [InlineData(0.5, .4923442259, .0647324329)]
    [InlineData(1, .7798934004, .4382591474)]
    [InlineData(1.5, .4452611760, .6975049601)]
    [InlineData(2, .4882534061, .3434156784)]
    [InlineData(3, .6057207893, .4963129990)]
    public void Meets_the_Fresnel_table(double t, double c, double s)
    {
        EulerSegment spiral = new(Point.Origin, 0, 0, Math.PI, 4);
        Point at = spiral.PositionAt(t);
        Assert.Equal(c, at.X, 5.1e-11);
        Assert.Equal(s, at.Y, 5.1e-11);
    }

    /// <summary>Sagitta R - √(R² - c²/4) of a radius over a chord, closed form: 4572 over 370, 7620 over 360, 508 over 52.</summary>
    [Theory]
    [InlineData(4572, 370, 3.74442484)]
    [InlineData(7620, 360, 2.12628091)]
    [InlineData(508, 52, .665790627)]
    public void Arcs_have_their_sagitta(double radius, double chord, double sagitta)
    {
        double half = Math.Asin(0.5 * chord / radius);
        EulerSegment arc = new(Point.Origin, half, -1 / radius, 0, 2 * half * radius);
        Assert.Equal(sagitta, arc.PositionAt(half * radius).Y, 1e-8);
        Assert.Equal(chord, arc.End.Position.X, 1e-9);
        Assert.Equal(0, arc.End.Position.Y, 1e-9);
    }

    [Fact]
    public void Agrees_with_a_quadrature_that_shares_nothing_with_it() =>
        (
            from angle in Gen.Double[-10, 10]
            from kappa in Gen.Double[-0.2, 0.2]
            from rate in Gen.Double[-2e-3, 2e-3]
            from length in Gen.Double[0.01, 300]
            from smallKappa in Small
            from smallRate in Small
            select new EulerSegment(new(3, 4), angle, kappa * smallKappa, rate * smallRate, length)
        ).Holds(
            segment =>
            {
                Vector wanted = Simpson(segment, segment.LengthMm);
                Vector got = segment.End.Position - segment.Start;
                Assert.True((wanted - got).Length <= 1e-9 * segment.LengthMm, $"{segment}");
            },
            iter: 150
        );

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(37)]
    public void Many_turns_of_a_circle_come_back(double radius)
    {
        EulerSegment turns = new(Point.Origin, 0.3, 1 / radius, 0, 2 * Math.PI * radius * 500);
        Assert.True(turns.End.Position.DistanceTo(Point.Origin) < 1e-9 * turns.LengthMm);
        Assert.Equal(0.3 + (1000 * Math.PI), turns.EndAngle, 1e-9);
    }

    [Fact]
    public void A_vanishing_rate_or_curvature_changes_nothing_abruptly()
    {
        EulerSegment arc = new(Point.Origin, 0, 0.01, 0, 100);
        EulerSegment nearly = new(Point.Origin, 0, 0.01, 1e-18, 100);
        EulerSegment line = new(Point.Origin, 0, 0, 0, 100);
        EulerSegment hardly = new(Point.Origin, 0, 1e-17, -1e-19, 100);
        Assert.True(arc.End.Position.DistanceTo(nearly.End.Position) < 1e-12);
        Assert.True(line.End.Position.DistanceTo(hardly.End.Position) < 1e-11);
        Assert.Equal(new Point(100, 0), line.End.Position);
    }

    [Fact]
    public void Parts_lie_on_the_whole() =>
        (
            from chain in Models.Chains
            from a in Gen.Double[0, 1]
            from b in Gen.Double[0, 1]
            select (Segment: chain.Segments[0], From: Math.Min(a, b), To: Math.Max(a, b))
        ).Holds(
            given =>
            {
                double from = given.From * given.Segment.LengthMm;
                double to = given.To * given.Segment.LengthMm;
                EulerSegment part = given.Segment.Part(from, to);
                CurvePoint middle = given.Segment.At(0.5 * (from + to));
                CurvePoint same = part.At(0.5 * part.LengthMm);
                Close(middle, same, 1e-10);
                EulerSegment back = given.Segment.Reversed().Reversed();
                Close(given.Segment.At(from), back.At(from), 1e-10);
            },
            iter: 300
        );

    [Theory]
    [InlineData(double.NaN, 0, 0, 1)]
    [InlineData(0, double.PositiveInfinity, 0, 1)]
    [InlineData(0, 0, double.NaN, 1)]
    [InlineData(0, 0, 0, -1)]
    [InlineData(0, 0, 0, double.NaN)]
    [InlineData(0, 1e300, 0, 1)]
    [InlineData(0, 0, 1, 1e6)]
    public void Refuses_what_is_no_segment(
        double angle,
        double kappa,
        double rate,
        double length
    ) =>
        Assert.ThrowsAny<ArgumentException>(() =>
            new EulerSegment(Point.Origin, angle, kappa, rate, length)
        );

    internal static void Close(CurvePoint wanted, CurvePoint got, double within)
    {
        Assert.True(wanted.Position.DistanceTo(got.Position) <= within, $"{wanted} {got}");
        Assert.Equal(0, Math.IEEERemainder(wanted.Angle - got.Angle, 2 * Math.PI), within);
        Assert.Equal(wanted.Curvature, got.Curvature, within);
    }

    /// <summary>Composite Simpson in steps that turn by at most 0.004 rad: error below 1e-11 of the length.</summary>
    private static Vector Simpson(EulerSegment segment, double length)
    {
        double bend =
            Math.Max(Math.Abs(segment.StartCurvature), Math.Abs(segment.EndCurvature)) * length;
        int steps = 2 * (int)Math.Ceiling(10 + (bend / 0.008));
        double h = length / steps;
        double x = 0;
        double y = 0;
        for (int i = 0; i <= steps; i++)
        {
            double weight =
                i == 0 || i == steps ? 1
                : i % 2 == 1 ? 4
                : 2;
            double s = i * h;
            double theta =
                segment.StartAngle
                + (segment.StartCurvature * s)
                + (0.5 * segment.CurvatureRate * s * s);
            x += weight * Math.Cos(theta);
            y += weight * Math.Sin(theta);
        }

        return new(x * h / 3, y * h / 3);
    }
}
