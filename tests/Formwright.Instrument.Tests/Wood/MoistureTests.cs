using CsCheck;
using Formwright.Instrument.Wood;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Wood;

/// <summary>Against the <i>Wood Handbook</i>, FPL-GTR-282 (2021).</summary>
public sealed class MoistureTests
{
    // Table 4-2, 70 °F: relative humidity %, equilibrium moisture content % (printed to 0.1).
    public static TheoryData<double, double> Table42 { get; } =
        new()
        {
            { 5, 1.3 },
            { 10, 2.5 },
            { 15, 3.5 },
            { 20, 4.5 },
            { 25, 5.4 },
            { 30, 6.2 },
            { 35, 6.9 },
            { 40, 7.7 },
            { 45, 8.5 },
            { 50, 9.2 },
            { 55, 10.1 },
            { 60, 11.0 },
            { 65, 12.0 },
            { 70, 13.1 },
            { 75, 14.4 },
            { 80, 16.0 },
            { 85, 17.9 },
            { 90, 20.5 },
            { 95, 23.9 },
        };

    [Theory]
    [MemberData(nameof(Table42))]
    public void EquilibriumMeetsTable42(double humidity, double moisture)
    {
        const double SeventyF = (70 - 32) / 1.8;
        Assert.Equal(moisture, Moisture.Equilibrium(SeventyF, humidity), 0.1);
    }

    [Fact]
    public void HumidityIsTheInverse() =>
        Gen.Select(Gen.Double[-10, 60], Gen.Double[0, 99])
            .Holds(
                (t, h) => Math.Abs(Moisture.HumidityFor(t, Moisture.Equilibrium(t, h)) - h) < 1e-8
            );

    [Fact]
    public void RisesWithHumidityAndFallsWithHeat() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[5, 90], Gen.Double[0.5, 5])
            .Holds(
                (t, h, step) =>
                    Moisture.Equilibrium(t, h + step) > Moisture.Equilibrium(t, h)
                    && Moisture.Equilibrium(t + step, h) < Moisture.Equilibrium(t, h) + 0.02
            );

    // Eq. 4-13 and 4-14 worked by hand: Gb 0.5, 12 %: 0.5/(1 - 0.265·0.5·0.6) = 0.543183; ·1.12 = 608.365.
    [Fact]
    public void DensityFollowsEquations413And414()
    {
        Assert.Equal(608.3650, Moisture.DensityKgPerM3(0.5, 12), 1e-3);
        // At the fibre saturation point the volume is green: 0.5 · 1.30.
        Assert.Equal(650, Moisture.DensityKgPerM3(0.5, 30), 1e-9);
    }

    [Theory]
    [InlineData(20, double.NaN)]
    [InlineData(20, 101)]
    [InlineData(500, 50)]
    public void RefusesAirThatIsNone(double temperature, double humidity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Moisture.Equilibrium(temperature, humidity)
        );
}
