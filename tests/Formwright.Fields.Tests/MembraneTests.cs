using CsCheck;
using Formwright.Curves;
using Formwright.Testing;
using Xunit;

namespace Formwright.Fields.Tests;

public sealed class MembraneTests
{
    [Fact]
    public void Unit_square_has_the_known_height_and_integral()
    {
        Region square = Shapes.Square(1, shift: new(0.5, 0.5));
        MembraneSolution coarse = Membrane.Solve(square, 1.0 / 128);
        MembraneSolution fine = Membrane.Solve(square, 1.0 / 256);
        // Series solution, computed: max .0736713532815, integral .0351442537388. Errors fall by four, so a third is taken off.
        double max = fine.Field.Peak.HeightMm;
        double integral = fine.Integral;
        Assert.Equal(.0736713532815, max, 1e-6);
        Assert.Equal(.0351442537388, integral, 2e-6);
        Assert.Equal(.0736713532815, max + ((max - coarse.Field.Peak.HeightMm) / 3), .0737e-6);
        Assert.Equal(.0351442537388, integral + ((integral - coarse.Integral) / 3), .0351e-6);
        Assert.Equal(0.5, fine.Field.Peak.Place.X, 1e-9);
        Assert.Equal(0.5, fine.Field.Peak.Place.Y, 1e-9);
        Assert.True(fine.Converged);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.00317, -0.00741)]
    public void Unit_disc_has_the_known_height_and_integral(double x, double y)
    {
        // Closed form u = (1 - r²)/4: max .25, integral π/8.
        MembraneSolution disc = Membrane.Solve(Shapes.Ellipse(1, 1, shift: new(x, y)), 1.0 / 100);
        Assert.Equal(.25, disc.Field.Peak.HeightMm, .25e-6);
        Assert.Equal(Math.PI / 8, disc.Integral, 1e-4);
        Assert.Equal(x, disc.Field.Peak.Place.X, 1e-6);
        Assert.Equal(y, disc.Field.Peak.Place.Y, 1e-6);
    }

    [Fact]
    public void Any_ellipse_anywhere_is_exact_up_to_its_polyline()
    {
        // u is quadratic there, and the equations, the edge and the spline are exact for quadratics.
        Gen.Select(
                Gen.Double[20, 200],
                Gen.Double[0.3, 1],
                Gen.Double[-Math.PI, Math.PI],
                Gen.Double[-50, 50],
                Gen.Double[-50, 50],
                Gen.Double[12, 60]
            )
            .Holds(
                (a, ratio, angle, x, y, stepsAcross) =>
                {
                    double b = a * ratio;
                    var shift = new Point(x, y);
                    Region region = Shapes.Ellipse(a, b, angle, shift, 12000);
                    MembraneSolution membrane = Membrane.Solve(region, 2 * b / stepsAcross);
                    double max = Shapes.EllipseU(a, b, 0, 0);
                    Assert.True(membrane.Converged);
                    foreach (Point place in Shapes.Places(region, 100))
                    {
                        Vector own = (place - shift).Turned(-angle);
                        double exact = Shapes.EllipseU(a, b, own.X, own.Y);
                        Assert.Equal(exact, membrane.Field.HeightAt(place), 1e-6 * max);
                    }
                },
                iter: 60
            );
    }

    [Fact]
    public void A_hole_is_an_edge_too()
    {
        var shift = new Point(.3, .2);
        Region region = Shapes.Annulus(50, 150, shift);
        MembraneSolution membrane = Membrane.Solve(region, 1);
        foreach (Point place in Shapes.Places(region, 1000))
        {
            Assert.Equal(
                Shapes.AnnulusU(50, 150, place.DistanceTo(shift)),
                membrane.Field.HeightAt(place),
                1e-4 * membrane.Field.Peak.HeightMm
            );
        }
        Assert.Equal(0, membrane.Field.HeightAt(shift));
    }

    [Fact]
    public void A_mirrored_region_has_a_mirrored_membrane()
    {
        Region region = Shapes.Guitar(12).BeyondX(106);
        MembraneSolution membrane = Membrane.Solve(region, 3.7);
        foreach (Point place in Shapes.Places(region, 500))
        {
            Assert.Equal(
                membrane.Field.HeightAt(place),
                membrane.Field.HeightAt(new(place.X, -place.Y)),
                1e-9 * membrane.Field.Peak.HeightMm
            );
        }
        Assert.Equal(0, membrane.Field.Peak.Place.Y, 1e-6);
    }

    [Fact]
    public void Start_and_direction_of_the_loop_do_not_change_a_bit()
    {
        Region region = Shapes.Guitar(12, 600);
        Point[] loop = [.. region.Loops[0]];
        MembraneSolution first = Membrane.Solve(region, 5);
        MembraneSolution turned = Membrane.Solve(
            Region.Of([.. loop.Skip(123).Concat(loop.Take(123)).Reverse()]),
            5
        );
        MembraneSolution again = Membrane.Solve(region, 5);
        foreach (Point place in Shapes.Places(region, 300))
        {
            Assert.Equal(first.Field.At(place), turned.Field.At(place));
            Assert.Equal(first.Field.At(place), again.Field.At(place));
        }
    }

    [Fact]
    public void Twice_the_size_is_four_times_the_height_to_the_last_bit()
    {
        Region region = Shapes.Guitar(12, 600);
        Region doubled = Region.Of([.. region.Loops[0].Select(p => new Point(2 * p.X, 2 * p.Y))]);
        MembraneSolution small = Membrane.Solve(region, 6);
        MembraneSolution large = Membrane.Solve(doubled, 12);
        foreach (Point place in Shapes.Places(region, 300))
        {
            Assert.Equal(
                4 * small.Field.HeightAt(place),
                large.Field.HeightAt(new(2 * place.X, 2 * place.Y))
            );
        }
    }

    [Fact]
    public void A_larger_region_has_a_higher_membrane()
    {
        // Maximum principle: what is added to a region lifts u everywhere.
        MembraneSolution inner = Membrane.Solve(Shapes.Guitar(14), 4);
        MembraneSolution outer = Membrane.Solve(Shapes.Guitar(10), 4);
        foreach (Point place in Shapes.Places(inner.Region, 500))
        {
            Assert.True(outer.Field.HeightAt(place) > inner.Field.HeightAt(place));
        }
    }

    [Fact]
    public void The_solver_converges_on_wild_regions()
    {
        Gen.Select(Gen.Double[0.02, 1].Array[3, 60], Gen.Double[-2.5, 2.5], Gen.Double[4, 60])
            .Holds(
                (radii, stretch, stepsAcross) =>
                {
                    double tall = Math.Exp(stretch);
                    Region region = Region.Of([
                        .. radii.Select(
                            (r, i) =>
                            {
                                Vector at = 100 * r * Vector.At(2 * Math.PI * i / radii.Length);
                                return new Point(at.X + 0.3, (at.Y * tall) + 0.7);
                            }
                        ),
                    ]);
                    double width = Math.Min(region.Bounds.WidthMm, region.Bounds.HeightMm);
                    double step = width / stepsAcross;
                    // A sliver may hold no node at all, which is refused.
                    if (region.AreaMm2 < 10 * step * step)
                    {
                        return;
                    }
                    MembraneSolution membrane = Membrane.Solve(region, step);
                    Assert.True(membrane.Converged, $"residual {membrane.Residual}");
                    Assert.InRange(membrane.Cycles, 1, 40);
                },
                iter: 200
            );
    }
}
