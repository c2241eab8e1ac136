using Formwright.Curves;
using Xunit;

namespace Formwright.Fields.Tests;

public sealed class HeightFieldTests
{
    private static readonly Region Body = Shapes.Guitar(12).BeyondX(106);
    private static readonly MembraneSolution Solution = Membrane.Solve(Body, 3);

    [Fact]
    public void Slope_and_curvature_are_those_of_the_height()
    {
        foreach (IHeightField field in Fields())
        {
            foreach (Point place in Shapes.Places(Body, 300))
            {
                const double d = 1e-3;
                Point[] around =
                [
                    place + new Vector(d, 0),
                    place - new Vector(d, 0),
                    place + new Vector(0, d),
                    place - new Vector(0, d),
                ];
                // On the way to the rim d = u^p bends without bound; there are other tests for it.
                if (field.HeightAt(place) < 0.05 * field.Peak.HeightMm)
                {
                    continue;
                }
                HeightSample at = field.At(place);
                HeightSample[] near = [.. around.Select(field.At)];
                double scale = field.Peak.HeightMm;
                Assert.Equal(field.HeightAt(place), at.HeightMm, 1e-15 * scale);
                AssertNear((near[0].HeightMm - near[1].HeightMm) / (2 * d), at.Slope.X, scale);
                AssertNear((near[2].HeightMm - near[3].HeightMm) / (2 * d), at.Slope.Y, scale);
                AssertNear((near[0].Slope.X - near[1].Slope.X) / (2 * d), at.Zxx, scale);
                AssertNear((near[2].Slope.X - near[3].Slope.X) / (2 * d), at.Zxy, scale);
                AssertNear((near[0].Slope.Y - near[1].Slope.Y) / (2 * d), at.Zxy, scale);
                AssertNear((near[2].Slope.Y - near[3].Slope.Y) / (2 * d), at.Zyy, scale);
            }
        }

        // A cubic spline's second derivative has corners at the grid lines, so differences across one leave a little.
        static void AssertNear(double difference, double derivative, double scale) =>
            Assert.Equal(difference, derivative, 2e-7 * scale);
    }

    [Fact]
    public void Nothing_is_higher_than_the_peak_and_it_is_level_there()
    {
        foreach (IHeightField field in Fields())
        {
            HeightPeak peak = field.Peak;
            Assert.Equal(peak.HeightMm, field.HeightAt(peak.Place), 1e-12 * peak.HeightMm);
            Assert.True(field.At(peak.Place).Slope.Length < 1e-9 * peak.HeightMm);
            foreach (Point place in Shapes.Places(Body, 2000))
            {
                Assert.True(field.HeightAt(place) <= peak.HeightMm);
            }
        }
    }

    [Fact]
    public void Outside_there_is_nothing()
    {
        foreach (IHeightField field in Fields())
        {
            foreach (Point place in new Point[] { new(105.9, 0), new(300, 180), new(-1e5, 1e5) })
            {
                Assert.Equal(0, field.HeightAt(place));
                Assert.Equal(default, field.At(place));
            }
        }
    }

    [Fact]
    public void Section_curvature_of_a_sphere_is_that_of_its_sections()
    {
        // z = √(R² - x² - y²) and its derivatives at (30, 40), R = 130: the section towards the top is a great circle.
        const double z = 120;
        var sample = new HeightSample(
            z,
            new(-30 / z, -40 / z),
            (-1 / z) - (900 / (z * z * z)),
            -1200 / (z * z * z),
            (-1 / z) - (1600 / (z * z * z))
        );
        Assert.Equal(-1 / 130.0, sample.SectionCurvature(new(0.6, 0.8)), 1e-15);
        // Across, the section is the circle of radius √(R² - 50²) = 120.
        Assert.Equal(-1 / 120.0, sample.SectionCurvature(new(-0.8, 0.6)), 1e-15);
    }

    [Fact]
    public void A_profile_has_both_ends_and_the_field_between()
    {
        var dome = new Dome(Solution, 3);
        IReadOnlyList<ProfilePoint> centreline = Profiles.Along(dome, new(100, 0), new(488, 0), 5);
        Assert.Equal(79, centreline.Count);
        Assert.Equal(new(100, 0), centreline[0].Place);
        Assert.Equal(new(488, 0), centreline[^1].Place);
        Assert.Equal(388, centreline[^1].AlongMm, 1e-12);
        foreach (ProfilePoint point in centreline)
        {
            HeightSample sample = dome.At(point.Place);
            Assert.Equal(sample.HeightMm, point.HeightMm);
            Assert.Equal(sample.Slope.X, point.Slope);
            Assert.Equal(
                sample.Zxx / Math.Pow(1 + (point.Slope * point.Slope), 1.5),
                point.Curvature,
                1e-15
            );
        }
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Profiles.Along(dome, new(1, 1), new(1, 1), 5)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Profiles.Along(dome, new(1, 1), new(double.NaN, 1), 5)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Profiles.Along(dome, new(1, 1), new(2, 1), 0)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Profiles.Along(dome, new(1, 1), new(2, 1), 1e-9)
        );
    }

    private static IHeightField[] Fields() =>
        [
            Solution.Field,
            new Dome(Solution, 3),
            new Dome(Solution, 2.5, 1.4),
            new Dome(Solution, 3, 2),
        ];
}
