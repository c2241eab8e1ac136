using Formwright.Curves;
using Xunit;

namespace Formwright.Fields.Tests;

public sealed class DomeTests
{
    private static readonly Region Disc = Shapes.Ellipse(150, 150, shift: new(200, 0));
    private static readonly MembraneSolution Membrane150 = Membrane.Solve(Disc, 4);

    [Theory]
    [InlineData(1)]
    [InlineData(1.3)]
    [InlineData(2)]
    public void Over_a_disc_it_is_the_closed_form(double p)
    {
        // u / max u = 1 - r²/R², so d = d_max (1 - r²/R²)^p.
        var dome = new Dome(Membrane150, 3, p);
        foreach (Point place in Shapes.Places(Disc, 500))
        {
            Vector from = place - new Point(200, 0);
            double share = 1 - (from.Dot(from) / (150 * 150));
            Assert.Equal(3 * Math.Pow(share, p), dome.HeightAt(place), 1e-5);
            double slope = 6 * p / (150 * 150) * Math.Pow(share, p - 1);
            Assert.Equal(-slope * from.X, dome.At(place).Slope.X, 1e-6);
            Assert.Equal(-slope * from.Y, dome.At(place).Slope.Y, 1e-6);
        }
        Assert.Equal(3, dome.Peak.HeightMm);
        Assert.Equal(200, dome.Peak.Place.X, 1e-6);
    }

    [Fact]
    public void At_the_rim_it_has_a_crease_or_none_as_its_exponent_says()
    {
        Point nearRim = new(200 + 150 - 1e-3, 0);
        // Slope of the natural dome on the rim: 2 d_max/R.
        Assert.Equal(-.04, new Dome(Membrane150, 3).At(nearRim).Slope.X, 1e-5);
        Assert.Equal(0, new Dome(Membrane150, 3, 2).At(nearRim).Slope.X, 1e-5);
        // Bent there by 8 d_max/R² for p = 2, without bound, but held, between 1 and 2.
        Assert.Equal(8 * 3 / 22500.0, new Dome(Membrane150, 3, 2).At(nearRim).Zxx, 1e-6);
        double held = new Dome(Membrane150, 3, 1.5).At(nearRim).Zxx;
        Assert.InRange(held, 0.001, 0.1);
    }

    [Fact]
    public void Relief_of_a_guitar_stays_within_its_tolerance()
    {
        Region body = Shapes.Guitar(12).BeyondX(106);
        MembraneSolution membrane = Membrane.SolveWithin(body, 3, 0.01);
        var dome = new Dome(membrane, 3);
        Assert.InRange(dome.EstimatedErrorMm, 0, 0.01);
        var fine = new Dome(Membrane.Solve(body, 0.8), 3);
        double largest = Shapes
            .Places(body, 4000)
            .Max(place => Math.Abs(dome.HeightAt(place) - fine.HeightAt(place)));
        Assert.InRange(largest, 0, dome.EstimatedErrorMm);
        Assert.True(membrane.Unknowns < 20_000);
    }

    [Fact]
    public void Tighter_tolerance_brings_a_smaller_error()
    {
        Region square = Shapes.Square(256, 0.3, new(.4, .7));
        double Error(double toleranceMm)
        {
            MembraneSolution membrane = Membrane.SolveWithin(square, 3, toleranceMm);
            Assert.True(membrane.EstimatedErrorMm(3) <= toleranceMm);
            var dome = new Dome(membrane, 3);
            double max = Shapes.SquareU(256, 0, 0);
            return Shapes
                .Places(square, 1000)
                .Max(place =>
                {
                    Vector own = (place - new Point(.4, .7)).Turned(-0.3);
                    return Math.Abs(
                        dome.HeightAt(place) - (3 * Shapes.SquareU(256, own.X, own.Y) / max)
                    );
                });
        }
        foreach (double tolerance in new[] { 0.03, 0.003, 0.0005 })
        {
            Assert.InRange(Error(tolerance), 0, tolerance);
        }
    }

    [Fact]
    public void A_coarse_polyline_is_part_of_the_estimate()
    {
        Region region = Region.Of(
            [
                .. Enumerable
                    .Range(0, 90)
                    .Select(i => Point.Origin + (150 * Vector.At(Math.PI * i / 45))),
            ],
            sagittaMm: 150 * (1 - Math.Cos(Math.PI / 90))
        );
        var dome = new Dome(Membrane.Solve(region, 3), 3);
        double largest = Shapes
            .Places(region, 2000)
            .Max(place =>
                Math.Abs(
                    dome.HeightAt(place)
                        - (3 * (1 - ((place - Point.Origin).Dot(place - Point.Origin) / 22500)))
                )
            );
        Assert.InRange(dome.EstimatedErrorMm / largest, 1, 20);
    }

    [Fact]
    public void Impossible_figures_are_refused()
    {
        Assert.Throws<ArgumentNullException>(() => new Dome(null!, 3));
        foreach (double bad in new[] { -1, double.NaN, double.PositiveInfinity })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => new Dome(Membrane150, bad));
            Assert.Throws<ArgumentOutOfRangeException>(() => Membrane.SolveWithin(Disc, 3, bad));
            Assert.Throws<ArgumentOutOfRangeException>(() => Membrane.Solve(Disc, bad));
        }
        foreach (double bad in new[] { 0.99, 2.01, double.NaN })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => new Dome(Membrane150, 3, bad));
            Assert.Throws<ArgumentOutOfRangeException>(() => Membrane150.EstimatedErrorMm(3, bad));
        }
        Assert.Throws<ArgumentOutOfRangeException>(() => Membrane.Solve(Disc, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Membrane.Solve(Disc, 1e-3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Membrane.Solve(Disc, 1e4));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Membrane.Solve(Shapes.Square(1, shift: new(9e5, 0)), 0.1)
        );
        Assert.Equal(0, new Dome(Membrane150, 0).HeightAt(new(200, 0)));
    }
}
