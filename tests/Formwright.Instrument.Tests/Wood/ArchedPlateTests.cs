using CsCheck;
using Formwright.Design.Sections;
using Formwright.Instrument.Wood;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Wood;

public sealed class ArchedPlateTests
{
    private static Timber Wood(Species species) =>
        Timber.Of(new PartWoodDesign(species, GrainCut.Quarter, null, null, null, null));

    private static ArchedPlate Back(double radius = 4000, double moisture = 8.5) =>
        new(
            Wood(Species.IndianRosewood),
            2.5,
            Wood(Species.SpanishCedar),
            7,
            16,
            110,
            radius,
            360,
            moisture
        );

    // Radius over chord, sagitta: closed form s = R - √(R² - c²/4), 50-digit arithmetic.
    [Theory]
    [InlineData(4572, 370, 3.74442484)]
    [InlineData(7620, 360, 2.12628091)]
    [InlineData(508, 52, 0.665790627)]
    public void SagittaAndRadiusAgree(double radius, double chord, double sagitta)
    {
        Assert.Equal(sagitta, Sagitta.OfRadius(radius, chord), 5e-9);
        Assert.Equal(
            radius,
            Sagitta.Radius(Sagitta.OfRadius(radius, chord), chord),
            radius * 1e-12
        );
        Assert.Equal(
            -radius,
            Sagitta.Radius(-Sagitta.OfRadius(radius, chord), chord),
            radius * 1e-12
        );
    }

    [Fact]
    public void FlatHasNoRise()
    {
        Assert.Equal(0, Sagitta.OfRadius(double.PositiveInfinity, 300));
        Assert.Equal(double.PositiveInfinity, Sagitta.Radius(0, 300));
        Assert.Equal(50, Sagitta.OfRadius(50, 100), 1e-12);
    }

    [Fact]
    public void AsGluedItIsAsGlued()
    {
        double humidity = Moisture.HumidityFor(20, 8.5);
        ArchState state = Back().In(new Air(20, humidity));
        Assert.Equal(4000, state.RadiusMm, 1e-5);
        Assert.Equal(Sagitta.OfRadius(4000, 360), state.RiseMm, 1e-8);
        Assert.Equal(0, state.PlatePullMPa, 1e-8);
    }

    [Fact]
    public void RisesInTheDampAndIsPulledInTheDry() =>
        Gen.Select(Gen.Double[25, 60], Gen.Double[1, 20])
            .Holds(
                (humidity, step) =>
                {
                    ArchState dry = Back().In(new Air(20, humidity));
                    ArchState damp = Back().In(new Air(20, humidity + step));
                    return damp.RiseMm > dry.RiseMm && damp.PlatePullMPa != dry.PlatePullMPa;
                }
            );

    // Timoshenko's strip for equal widths: bar as wide as its share of plate.
    [Fact]
    public void EqualWidthsAreTimoshenkosStrip()
    {
        ArchedPlate arch = Back() with { BarWidthMm = 110 };
        double m = 16 / 2.5;
        double n = arch.Bar.ModulusLongMPa / arch.Plate.ModulusAcrossMPa;
        double strain = arch.Plate.AcrossPerPercent - Movement.AlongGrainPerPercent;
        double square = (1 + m) * (1 + m);
        double expected =
            6
            * strain
            * square
            / (18.5 * ((3 * square) + ((1 + (m * n)) * ((m * m) + (1 / (m * n))))));
        Assert.Equal(expected, arch.CurvaturePerPercent, expected * 1e-12);
    }

    [Fact]
    public void GlueHumidityHalvesTheStray()
    {
        double best = ArchedPlate.BestGlueHumidity(20, 30, 65);
        ArchedPlate arch = Back(moisture: Moisture.Equilibrium(20, best));
        double nominal = 1 / 4000.0;
        double up = (1 / arch.In(new Air(20, 65)).RadiusMm) - nominal;
        double down = nominal - (1 / arch.In(new Air(20, 30)).RadiusMm);
        Assert.Equal(up, down, 1e-12);
    }

    [Fact]
    public void DampestGlueHumidityLeavesTheShareInTheDry()
    {
        double humidity = Back().DampestGlueHumidity(20, 30, 0.6);
        ArchedPlate arch = Back(moisture: Moisture.Equilibrium(20, humidity));
        Assert.Equal(4000 / 0.6, arch.In(new Air(20, 30)).RadiusMm, 1e-5);
        Assert.Equal(100, Back(double.PositiveInfinity).DampestGlueHumidity(20, 30, 0.6));
    }
}
