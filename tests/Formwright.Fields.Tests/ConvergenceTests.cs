using Formwright.Curves;
using Xunit;

namespace Formwright.Fields.Tests;

/// <summary>The observed order of the error against closed forms, in the largest norm, between nodes and up to the edge.</summary>
public sealed class ConvergenceTests
{
    private static readonly double[] Steps = [8, 4, 2, 1];

    public static TheoryData<double, double, double> SquarePlacements =>
        new()
        {
            { 0, 0, 0 },
            { 0, .37, 1.13 },
            { 0, .5, .5 },
            { .3, .37, 1.13 },
            { Math.PI / 4, 0, 0 },
            { 1.2, -20.1, 7.7 },
        };

    [Theory]
    [MemberData(nameof(SquarePlacements))]
    public void Square_is_second_order_however_it_lies(double angle, double x, double y)
    {
        var shift = new Point(x, y);
        double OrderOf(Func<Vector, bool> counts)
        {
            double[] errors = Errors(
                Shapes.Square(256, angle, shift),
                place =>
                {
                    Vector own = (place - shift).Turned(-angle);
                    return counts(own) ? Shapes.SquareU(256, own.X, own.Y) : double.NaN;
                }
            );
            return Order(errors);
        }
        // In a corner u behaves as r² log r and single steps scatter; over three halvings the order is clear there too.
        Assert.InRange(OrderOf(_ => true), 1.9, 3.5);
        Assert.InRange(OrderOf(own => Math.Abs(own.X) + Math.Abs(own.Y) < 200), 1.9, 2.3);
    }

    [Theory]
    [InlineData(.06, 3, .2, .4, .7)]
    [InlineData(.05, 4, .2, .4, .7)]
    [InlineData(.03, 5, .2, .4, .7)]
    [InlineData(.03, 5, 1.1, -3.3, 0)]
    [InlineData(.015, 7, .9, .01, -.02)]
    public void Wavy_edge_is_second_order(double c, int k, double angle, double x, double y)
    {
        var shift = new Point(x, y);
        double[] errors = Errors(
            Shapes.Wavy(150, c, k, angle, shift),
            place => Shapes.WavyU(150, c, k, angle, place - shift)
        );
        AssertSecondOrder(errors);
    }

    [Fact]
    public void Annulus_is_second_order()
    {
        var shift = new Point(.3, .2);
        double[] errors = Errors(
            Shapes.Annulus(50, 150, shift),
            place => Shapes.AnnulusU(50, 150, place.DistanceTo(shift))
        );
        AssertSecondOrder(errors);
    }

    [Fact]
    public void Slope_is_second_and_curvature_first_order_up_to_a_curved_edge()
    {
        var shift = new Point(.4, .7);
        Region region = Shapes.Wavy(150, .05, 4, .2, shift);
        double U(Point place) => Shapes.WavyU(150, .05, 4, .2, place - shift);
        var slopes = new List<double>();
        var curvatures = new List<double>();
        foreach (double step in Steps)
        {
            HeightField field = Membrane.Solve(region, step).Field;
            double slope = 0;
            double curvature = 0;
            foreach (Point place in Shapes.Places(region, 2000))
            {
                HeightSample sample = field.At(place);
                // Central differences of the closed form, which goes on beyond the edge.
                Point Moved(double x, double y) => place + new Vector(x, y);
                const double d = 1e-2;
                var exact = new Vector(
                    (U(Moved(d, 0)) - U(Moved(-d, 0))) / (2 * d),
                    (U(Moved(0, d)) - U(Moved(0, -d))) / (2 * d)
                );
                const double e = 0.1;
                double xx = (U(Moved(e, 0)) - (2 * U(place)) + U(Moved(-e, 0))) / (e * e);
                double xy =
                    (U(Moved(e, e)) - U(Moved(-e, e)) - U(Moved(e, -e)) + U(Moved(-e, -e)))
                    / (4 * e * e);
                slope = Math.Max(slope, (sample.Slope - exact).Length);
                curvature = Math.Max(
                    curvature,
                    Math.Max(Math.Abs(sample.Zxx - xx), Math.Abs(sample.Zxy - xy))
                );
            }
            slopes.Add(slope);
            curvatures.Add(curvature);
        }
        Assert.InRange(Order([.. slopes]), 1.8, 3);
        Assert.InRange(Order([.. curvatures]), 0.9, 2.5);
    }

    [Fact]
    public void Estimated_error_covers_the_true_one_without_exaggerating()
    {
        var shift = new Point(.4, .7);
        foreach (double step in Steps)
        {
            AssertCovered(
                Shapes.Wavy(150, .03, 5, .2, shift),
                step,
                p => Shapes.WavyU(150, .03, 5, .2, p - shift),
                1
            );
            AssertCovered(
                Shapes.Annulus(50, 150, shift),
                step,
                p => Shapes.AnnulusU(50, 150, p.DistanceTo(shift)),
                1
            );
            // In the very tip of a corner the error falls in leaps, and the coarser grid may happen to be the better one.
            AssertCovered(Shapes.Square(256, .3, shift), step, SquareTurned, 0.75);
        }
        void AssertCovered(Region region, double step, Func<Point, double> u, double atLeast)
        {
            MembraneSolution membrane = Membrane.Solve(region, step);
            double error = RelativeError(region, membrane, u);
            Assert.InRange(membrane.RelativeError / error, atLeast, 30);
        }
        double SquareTurned(Point place)
        {
            Vector own = (place - shift).Turned(-.3);
            return Shapes.SquareU(256, own.X, own.Y);
        }
    }

    /// <summary>Over all steps at least 1.9, and at the last halving, where what is left of higher orders is small, 1.95.</summary>
    private static void AssertSecondOrder(double[] errors)
    {
        string all = string.Join(' ', errors);
        Assert.True(Order(errors) >= 1.9, all);
        Assert.True(Math.Log2(errors[^2] / errors[^1]) >= 1.95, all);
    }

    private static double[] Errors(Region region, Func<Point, double> exact) =>
        [.. Steps.Select(step => RelativeError(region, Membrane.Solve(region, step), exact))];

    private static double RelativeError(
        Region region,
        MembraneSolution membrane,
        Func<Point, double> exact
    )
    {
        double largest = 0;
        foreach (Point place in Shapes.Places(region, 4000))
        {
            double u = exact(place);
            if (double.IsFinite(u))
            {
                largest = Math.Max(largest, Math.Abs(membrane.Field.HeightAt(place) - u));
            }
        }
        return largest / membrane.Field.Peak.HeightMm;
    }

    /// <summary>Slope of log error over log step, least squares.</summary>
    private static double Order(double[] errors)
    {
        double meanX = Steps.Average(Math.Log2);
        double meanY = errors.Average(Math.Log2);
        double top = 0;
        double bottom = 0;
        for (int i = 0; i < errors.Length; i++)
        {
            double x = Math.Log2(Steps[i]) - meanX;
            top += x * (Math.Log2(errors[i]) - meanY);
            bottom += x * x;
        }
        return top / bottom;
    }
}
