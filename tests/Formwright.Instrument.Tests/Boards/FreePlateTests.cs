using Formwright.Design.Sections;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Wood;
using Xunit;

namespace Formwright.Instrument.Tests.Boards;

public sealed class FreePlateTests
{
    // Sitka, EL 10.8 GPa, ER .078 EL, GLR .064 EL, νLR .372, 400 kg/m³, 2.5 mm, 500 (L) × 200 mm, free edges, converged Ritz values.
    [Fact]
    public void OrthotropicBoardMeetsConvergedValues()
    {
        Timber sitka = Timber.Of(
            new PartWoodDesign(Species.SitkaSpruce, GrainCut.Quarter, 400, 10.8, null, null)
        );
        FreePlate plate = new(
            500,
            200,
            sitka.PlateLongNmm(2.5),
            sitka.PlateAcrossNmm(2.5),
            sitka.PoissonLong * sitka.PlateAcrossNmm(2.5),
            sitka.PlateTwistNmm(2.5),
            1
        );
        double[] expected = [34.6626, 53.3971, 88.2051, 93.7016];
        IReadOnlyList<FreePlateMode> modes = plate.Lowest(4);
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(1, modes[i].FrequencyHz / expected[i], 1e-4);
        }
    }

    // Isotropic square, ν 0.3, λ = ω a² √(ρh/D), free edges: converged 13.46820 19.59614 24.27020 34.80089. Barton's printed upper bounds
    // (J. Appl. Mech. 18, 1951) are 13.49, 19.79, 24.43.
    [Fact]
    public void IsotropicSquareMeetsConvergedValuesAndStaysUnderPrintedBounds()
    {
        // a = 1000 mm, ρh = 1 kg/m², D = 1000 N·mm = 1 N·m: λ = ω a² √(ρh/D) = ω with a in m.
        FreePlate plate = new(1000, 1000, 1000, 1000, 300, 350, 1);
        IReadOnlyList<FreePlateMode> modes = plate.Lowest(4);
        double[] expected = [13.46820, 19.59614, 24.27020, 34.80089];
        double[] bounds = [13.49, 19.79, 24.43, double.PositiveInfinity];
        for (int i = 0; i < 4; i++)
        {
            double lambda = 2 * Math.PI * modes[i].FrequencyHz;
            Assert.Equal(1, lambda / expected[i], 1e-4);
            Assert.True(lambda < bounds[i]);
        }
    }

    // A narrow strip is a free-free beam: β = 4.7300407449.
    [Fact]
    public void ANarrowStripIsABeam()
    {
        // E = 10000 MPa, h = 4, ν 0: D = E h³/12, mass per area 400 · 0.004 = 1.6.
        double d = 10000.0 * 64 / 12;
        FreePlate strip = new(600, 12, d, d, 0, d / 2, 1.6);
        double beam = Math.Pow(4.7300407449 / 0.6, 2) * Math.Sqrt(d / 1000 / 1.6) / (2 * Math.PI);
        Assert.Equal(1, strip.TapModes().Along.FrequencyHz / beam, 1e-6);
        Assert.Equal(1, strip.TapModes().Along.LongShare, 1e-6);
    }

    [Fact]
    public void LongAndCrossChangePlacesWhenTheBoardIsTurned()
    {
        FreePlate plate = new(550, 200, 14000, 1100, 410, 880, 1);
        FreePlate turned = new(200, 550, 1100, 14000, 410, 880, 1);
        (FreePlateMode along, FreePlateMode across, FreePlateMode twist) = plate.TapModes();
        (FreePlateMode along2, FreePlateMode across2, FreePlateMode twist2) = turned.TapModes();
        Assert.Equal(along.FrequencyHz, across2.FrequencyHz, 1e-9);
        Assert.Equal(across.FrequencyHz, along2.FrequencyHz, 1e-9);
        Assert.Equal(twist.FrequencyHz, twist2.FrequencyHz, 1e-9);
    }
}
