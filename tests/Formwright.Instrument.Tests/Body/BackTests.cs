using CsCheck;
using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class BackTests
{
    private static readonly Region Square = Region.Of([
        new(0, -200),
        new(488, -200),
        new(488, 200),
        new(0, 200),
    ]);

    private static BackField Field(
        BackKind kind,
        double heel,
        double tail,
        double along,
        double across
    )
    {
        BackDesign design = Demo.Design().Back with
        {
            Kind = kind,
            DepthHeelMm = heel,
            DepthTailMm = tail,
            LongRadiusMm = along,
            CrossRadiusMm = across,
        };
        return new BackField(design, 488, Square);
    }

    [Fact]
    public void EndsAreAsGiven() =>
        Gen.Select(Gen.Double[60, 120], Gen.Double[60, 120], Gen.Double[500, 9000], Gen.Bool)
            .Holds(
                (heel, tail, radius, sphere) =>
                {
                    BackField field = Field(
                        sphere ? BackKind.Sphere : BackKind.Arches,
                        heel,
                        tail,
                        radius,
                        4000
                    );
                    Assert.Equal(heel, field.HeightAt(new Point(0, 0)), 1e-8);
                    Assert.Equal(tail, field.HeightAt(new Point(488, 0)), 1e-8);
                }
            );

    // Every place of a sphere lies at the radius from one centre; the centreline of both kinds is the same circle.
    [Fact]
    public void SphereIsASphere()
    {
        BackField sphere = Field(BackKind.Sphere, 92, 98, 4500, 0);
        BackField arches = Field(BackKind.Arches, 92, 98, 4500, 4000);
        Point[] places = [new(0, 0), new(100, 50), new(250, -170), new(488, 0), new(400, 120)];
        // Centre from three places of the centreline.
        (double x, double z) = Centre(sphere, 0, 200, 488);
        foreach (Point place in places)
        {
            double dz = sphere.HeightAt(place) - z;
            double dx = place.X - x;
            Assert.Equal(4500, Math.Sqrt((dx * dx) + (place.Y * place.Y) + (dz * dz)), 1e-6);
            Point middle = new(place.X, 0);
            Assert.Equal(sphere.HeightAt(middle), arches.HeightAt(middle), 1e-9);
        }
    }

    private static (double X, double Z) Centre(BackField field, double a, double b, double c)
    {
        double za = field.HeightAt(new Point(a, 0));
        double zb = field.HeightAt(new Point(b, 0));
        double zc = field.HeightAt(new Point(c, 0));
        double d = 2 * ((a * (zb - zc)) + (b * (zc - za)) + (c * (za - zb)));
        double sa = (a * a) + (za * za);
        double sb = (b * b) + (zb * zb);
        double sc = (c * c) + (zc * zc);
        return (
            ((sa * (zb - zc)) + (sb * (zc - za)) + (sc * (za - zb))) / d,
            ((sa * (c - b)) + (sb * (a - c)) + (sc * (b - a))) / d
        );
    }

    // Sagitta over the chord of the ends, at its middle: exact circle, not a parabola.
    [Fact]
    public void LongArchHasItsSagitta()
    {
        BackField field = Field(BackKind.Arches, 95, 95, 1000, 0);
        double rise = 1000 - Math.Sqrt(1e6 - (244.0 * 244));
        Assert.Equal(95 + rise, field.HeightAt(new Point(244, 0)), 1e-9);
        Assert.Equal(244, field.Peak.Place.X, 1e-9);
    }

    [Theory]
    [InlineData(BackKind.Arches)]
    [InlineData(BackKind.Sphere)]
    public void DerivativesMatchDifferences(BackKind kind) =>
        Derivatives.Check(Field(kind, 92, 98, 2500, 1800), new(40, -150), new(440, 150), 1e-6);

    // Bar gauges of a sphere are circles of radius √(R² - (u - uc)²), of a cylinder of the cross radius.
    [Fact]
    public void BarGaugesAreCircles()
    {
        BodyPlan arches = Demo.Plan();
        Assert.Equal(3, arches.Back.Bars.Count);
        foreach (BackBar bar in arches.Back.Bars)
        {
            double rise = 4000 - Math.Sqrt((4000.0 * 4000) - (bar.HalfMm * bar.HalfMm));
            Assert.Equal(rise, bar.Gauge.MostMm, 1e-9);
            Assert.Equal(4000, bar.Gauge.MeanRadiusMm, 1e-3);
            Assert.Equal(0, bar.Gauge.TiltMm, 1e-9);
        }
    }

    // The bar ends on the ribs' inner face, 2 mm inside the outline square to it.
    [Fact]
    public void BarsReachTheInnerFaceOfTheRibs()
    {
        BodyPlan plan = Demo.Plan();
        foreach (BackBar bar in plan.Back.Bars)
        {
            Assert.Equal(2, plan.Guitar.Outline.Half.Nearest(bar.Ends.Treble).DistanceMm, 1e-6);
        }
    }

    [Fact]
    public void VolumeOfARoundBoxIsACylinder()
    {
        Outline circle = Demo.Circle(150);
        BackField flat = Field(BackKind.Arches, 90, 90, 0, 0);
        IHeightField none = Field(BackKind.Arches, 1e-9, 1e-9, 0, 0);
        Assert.Equal(
            Math.PI * 148 * 148 * 90 * 1e-6,
            BoxVolume.Litres(circle, flat, none, 2),
            1e-7
        );
    }

    // Between the volumes of prisms at the least and greatest depth, and near that of a grid sum of 1 mm cells.
    [Fact]
    public void VolumeOfHeronMeetsAGridSum()
    {
        BodyPlan plan = Demo.Plan();
        Polyline inner = Offset.Of(plan.Guitar.Outline.Closed, 2).Paths.Single().ToPolyline(0.01);
        Region region = Region.Of(inner.Points);
        double sum = 0;
        for (double u = 0.5; u < 488; u++)
        {
            for (double y = -190.5; y < 191; y++)
            {
                Point place = new(u, y);
                if (region.Contains(place))
                {
                    sum += plan.Back.Depth.HeightAt(place) + plan.Guitar.Dome.Field.HeightAt(place);
                }
            }
        }

        Assert.Equal(1, plan.Back.VolumeL / (sum * 1e-6), 5e-4);
    }

    [Fact]
    public void BarVolumeIsItsIntegral() =>
        Gen.Select(Gen.Double[50, 400], Gen.Double[0, 80], Gen.Double[0, 6], Gen.Double[6, 18])
            .Holds(
                (length, scoop, end, height) =>
                {
                    BarShape bar = new(6, height, end, scoop, BraceSection.Gable);
                    const int Steps = 20000;
                    double sum = 0;
                    for (int i = 0; i < Steps; i++)
                    {
                        sum += bar.HeightAt((i + 0.5) * length / Steps, length);
                    }

                    double expected = sum * length / Steps * 6 * 0.75;
                    // The sum misplaces a short scoop by up to a step in 20 000 at each end.
                    Assert.Equal(1, bar.VolumeMm3(length) / expected, 1e-4);
                },
                iter: 20
            );
}
