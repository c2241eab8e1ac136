using CsCheck;
using Formwright.Instrument.Wood;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Wood;

public sealed class LayeredStripTests
{
    // Timoshenko, Analysis of bi-metal thermostats, J. Opt. Soc. Am. 11 (1925), eq. 4:
    // κ = 6 Δε (1+m)² / (h [3(1+m)² + (1+mn)(m² + 1/(mn))]), m = a1/a2, n = E1/E2, h = a1 + a2, Δε = ε2 - ε1.
    private static double Timoshenko(Layer bottom, Layer top)
    {
        double m = bottom.ThicknessMm / top.ThicknessMm;
        double n = bottom.ModulusMPa / top.ModulusMPa;
        double h = bottom.ThicknessMm + top.ThicknessMm;
        double square = (1 + m) * (1 + m);
        return 6
            * (top.FreeStrain - bottom.FreeStrain)
            * square
            / (h * ((3 * square) + ((1 + (m * n)) * ((m * m) + (1 / (m * n))))));
    }

    [Fact]
    public void TwoLayersBendAsTimoshenkoSays() =>
        Gen.Select(
                Gen.Double[0.5, 20],
                Gen.Double[0.5, 20],
                Gen.Double[500, 20000],
                Gen.Double[500, 20000],
                Gen.Double[-0.01, 0.01]
            )
            .Holds(
                (a1, a2, e1, e2, strain) =>
                {
                    Layer bottom = new(10, a1, e1, 0.001);
                    Layer top = new(10, a2, e2, strain);
                    double expected = Timoshenko(bottom, top);
                    double actual = LayeredStrip.Of(bottom, top).CurvaturePerMm;
                    return Math.Abs(actual - expected) <= 1e-12 + (1e-10 * Math.Abs(expected));
                }
            );

    // Equal layers, the classic special case: κ = 3/2 Δε/h.
    [Fact]
    public void EqualLayersGiveThreeHalvesOfStrainOverHeight() =>
        Assert.Equal(
            1.5 * 0.003 / 6,
            LayeredStrip
                .Of(new Layer(20, 3, 9000, 0), new Layer(20, 3, 9000, 0.003))
                .CurvaturePerMm,
            1e-15
        );

    [Fact]
    public void ForcesAndMomentsOfTheStressesVanish()
    {
        LayeredStrip strip = LayeredStrip.Of(
            new Layer(6, 17, 9800, 0.0001),
            new Layer(100, 2.5, 780, 0.004),
            new Layer(40, 1, 12000, -0.001)
        );
        double bottom = 0;
        double force = 0;
        double moment = 0;
        for (int i = 0; i < strip.Layers.Count; i++)
        {
            Layer layer = strip.Layers[i];
            double low = strip.StressMPa(i, bottom);
            double high = strip.StressMPa(i, bottom + layer.ThicknessMm);
            double area = layer.WidthMm * layer.ThicknessMm;
            double middle = bottom + (layer.ThicknessMm / 2);
            force += area * (low + high) / 2;
            moment +=
                area * (((low + high) / 2 * middle) + ((high - low) * layer.ThicknessMm / 12));
            bottom += layer.ThicknessMm;
        }

        Assert.Equal(0, force, 1e-7);
        Assert.Equal(0, moment, 1e-6);
    }

    // A single layer: E b h³/12 and no bending.
    [Fact]
    public void OneLayerIsAPlainBeam()
    {
        LayeredStrip strip = LayeredStrip.Of(new Layer(10, 6, 12000, 0.002));
        Assert.Equal(12000.0 * 10 * 216 / 12, strip.BendingStiffnessNmm2, 1e-6);
        Assert.Equal(0, strip.CurvaturePerMm, 1e-18);
        Assert.Equal(0.002, strip.AxisStrain, 1e-18);
    }

    [Fact]
    public void TurnedUpsideDownItBendsTheOtherWay()
    {
        Layer a = new(6, 17, 9800, 0);
        Layer b = new(100, 2.5, 780, 0.004);
        Assert.Equal(
            -LayeredStrip.Of(a, b).CurvaturePerMm,
            LayeredStrip.Of(b, a).CurvaturePerMm,
            1e-18
        );
    }
}
