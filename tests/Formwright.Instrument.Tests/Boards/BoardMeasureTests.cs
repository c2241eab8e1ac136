using CsCheck;
using Formwright.Design.Sections;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Wood;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Boards;

public sealed class BoardMeasureTests
{
    private static readonly PartWoodDesign Spruce = new(
        Species.EngelmannSpruce,
        GrainCut.Quarter,
        null,
        null,
        null,
        null
    );

    private static readonly BoardTestDesign Nothing = new(
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null
    );

    // E = m g L³/(4 b h³ δ), by hand: 0.5 kg, 400 mm, 200 × 4 mm, 1 mm: 4.903325 · 64e6 / (4 · 200 · 64 · 1) = 6129.15625 MPa.
    [Fact]
    public void BendingTestIsTheBeamFormula() =>
        Assert.Equal(6129.15625, BendingTest.ModulusMPa(400, 500, 1, 200, 4), 1e-6);

    [Fact]
    public void TapNotesOfAKnownBoardGiveItsModuliBack() =>
        Gen.Select(
                Gen.Double[8000, 16000],
                Gen.Double[0.05, 0.13],
                Gen.Double[0.05, 0.12],
                Gen.Double[2.5, 5],
                Gen.Double[170, 220]
            )
            .Holds(
                (e, cross, shear, thickness, width) =>
                {
                    Timber wood = Timber.Of(Spruce) with
                    {
                        ModulusLongMPa = e,
                        ModulusAcrossMPa = cross * e,
                        ShearMPa = shear * e,
                    };
                    const double Length = 550;
                    FreePlate plate = new(
                        Length,
                        width,
                        wood.PlateLongNmm(thickness),
                        wood.PlateAcrossNmm(thickness),
                        wood.PoissonLong * wood.PlateAcrossNmm(thickness),
                        wood.PlateTwistNmm(thickness),
                        410 * thickness / 1000
                    );
                    (FreePlateMode along, FreePlateMode across, FreePlateMode twist) =
                        plate.TapModes();
                    TapFit fit = TapFit.Of(
                        Length,
                        width,
                        thickness,
                        410e-6 * Length * width * thickness,
                        along.FrequencyHz,
                        across.FrequencyHz,
                        twist.FrequencyHz,
                        Timber.Of(Spruce)
                    );
                    Assert.True(fit.Converged);
                    Assert.Equal(1, fit.ModulusLongMPa / e, 1e-5);
                    Assert.Equal(1, fit.ModulusCrossMPa / (cross * e), 1e-5);
                    Assert.Equal(1, fit.ShearMPa / (shear * e), 1e-5);
                },
                iter: 12
            );

    [Fact]
    public void ALongNoteAloneScalesTheTable()
    {
        TapFit fit = TapFit.Of(550, 200, 4, 180, 80, null, null, Timber.Of(Spruce));
        Timber table = Timber.Of(Spruce);
        Assert.True(fit.Converged);
        Assert.Equal(
            table.ModulusAcrossMPa / table.ModulusLongMPa,
            fit.ModulusCrossMPa / fit.ModulusLongMPa,
            1e-12
        );
    }

    [Fact]
    public void WithoutATestTheTableStands() =>
        Assert.Equal(Timber.Of(Spruce), BoardMeasure.Of(Spruce, Nothing).Timber);

    [Fact]
    public void ABendingTestReplacesTheTableAndScalesTheRest()
    {
        BoardMeasure measure = BoardMeasure.Of(
            Spruce,
            Nothing with
            {
                LengthMm = 550,
                WidthMm = 200,
                ThicknessMm = 4,
                MassG = 180,
                BendSpanMm = 400,
                BendLoadG = 500,
                BendDeflectionMm = 0.6,
            }
        );
        Assert.Equal(6129.15625 / 0.6, measure.Timber.ModulusLongMPa, 1e-6);
        Assert.Equal(180e6 / (550 * 200 * 4), measure.Timber.DensityKgPerM3, 1e-9);
        Assert.True(measure.Timber.LongMeasured && !measure.Timber.AcrossMeasured);
        Timber table = Timber.Of(Spruce);
        Assert.Equal(
            table.ModulusAcrossMPa / table.ModulusLongMPa,
            measure.Timber.ModulusAcrossMPa / measure.Timber.ModulusLongMPa,
            1e-12
        );
        // 3 · 0.05/√3/4 (thickness) and 0.02/√3/0.6 (dial) lead: about 2.9 %.
        Assert.Equal(0.029, measure.LongUncertaintyShare!.Value, 0.001);
    }

    [Fact]
    public void ThicknessForATargetGivesTheTarget()
    {
        Timber board = Timber.Of(Spruce) with { ModulusLongMPa = 12500, DensityKgPerM3 = 430 };
        BoardThickness thickness = BoardThickness.For(board, 130000, 14, 1.1, 135);
        Assert.Equal(14, board.PlateLongNmm(thickness.ForLongMm) / 1000, 1e-9);
        Assert.Equal(1.1, board.PlateAcrossNmm(thickness.ForCrossMm) / 1000, 1e-9);
        Assert.Equal(135, BoardThickness.MassG(430, 130000, thickness.ForMassMm), 1e-9);
        Assert.Equal(
            14 * 1.1,
            board.PlateLongNmm(thickness.ForBothMm)
                * board.PlateAcrossNmm(thickness.ForBothMm)
                / 1e6,
            1e-9
        );
    }
}
