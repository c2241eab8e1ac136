using Formwright.Design.Sections;
using Formwright.Instrument.Wood;
using Xunit;

namespace Formwright.Instrument.Tests.Wood;

public sealed class TimberTests
{
    // Sitka, E_L 10.8 GPa, E_R .078 E_L, G_LR .064 E_L, ν_LR .372, 2.5 mm: D_L 14.2159, D_R 1.1088, H 2.2125 N·m (orthotropic plate
    // theory, H = ν_LR D_R + 2 G h³/12).
    [Fact]
    public void PlateStiffnessesFollowFromTheModuli()
    {
        Timber sitka = Timber.Of(
            new PartWoodDesign(Species.SitkaSpruce, GrainCut.Quarter, 400, 10.8, null, null)
        );
        Assert.Equal(14.2159, sitka.PlateLongNmm(2.5) / 1000, 5e-5);
        Assert.Equal(1.1088, sitka.PlateAcrossNmm(2.5) / 1000, 5e-5);
        double h = (sitka.PoissonLong * sitka.PlateAcrossNmm(2.5)) + (2 * sitka.PlateTwistNmm(2.5));
        Assert.Equal(2.2125, h / 1000, 5e-5);
    }

    [Fact]
    public void MeasuredFiguresReplaceTheTable()
    {
        Timber board = Timber.Of(
            new PartWoodDesign(Species.EngelmannSpruce, GrainCut.Quarter, 412, 11.3, 0.9, null)
        );
        Assert.Equal(412, board.DensityKgPerM3);
        Assert.Equal(11300, board.ModulusLongMPa);
        Assert.Equal(900, board.ModulusAcrossMPa);
        Assert.True(board.DensityMeasured && board.LongMeasured && board.AcrossMeasured);
        Assert.False(board.ShearMeasured);
        Assert.Equal(0.124 * 11300, board.ShearMPa, 1e-9);
    }

    [Fact]
    public void FlatCutWoodMovesMoreAndIsSofterAcross()
    {
        PartWoodDesign part = new(Species.SitkaSpruce, GrainCut.Quarter, null, null, null, null);
        Timber quarter = Timber.Of(part);
        Timber flat = Timber.Of(part with { Cut = GrainCut.Flat });
        Assert.True(flat.AcrossPerPercent > quarter.AcrossPerPercent);
        Assert.True(flat.ModulusAcrossMPa < quarter.ModulusAcrossMPa);
        Assert.Equal(quarter.AcrossPerPercent, flat.ThroughPerPercent);
    }
}
