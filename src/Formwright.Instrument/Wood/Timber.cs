using Formwright.Design.Sections;

namespace Formwright.Instrument.Wood;

/// <summary>
/// The wood of one part, resolved: what the maker measured, else the species table. "Across" is the direction across the grain in the
/// part's width: radial for quarter-cut wood, tangential for flat-cut.
/// </summary>
/// <param name="Species">Species.</param>
/// <param name="Cut">How its width lies to the growth rings.</param>
/// <param name="DensityKgPerM3">Density at 12 % moisture, kg/m³.</param>
/// <param name="ModulusLongMPa">E along the grain, MPa.</param>
/// <param name="ModulusAcrossMPa">E across the grain in the width, MPa.</param>
/// <param name="ShearMPa">Shear modulus in the plane of length and width, MPa.</param>
/// <param name="PoissonLong">ν: strain in the width per strain along the grain, under a pull along the grain.</param>
/// <param name="AcrossPerPercent">Movement in the width, share per % of moisture.</param>
/// <param name="ThroughPerPercent">Movement in the thickness, share per % of moisture.</param>
/// <param name="DensityMeasured">The density was measured.</param>
/// <param name="LongMeasured">The modulus along the grain was measured.</param>
/// <param name="AcrossMeasured">The modulus across was measured.</param>
/// <param name="ShearMeasured">The shear modulus was measured.</param>
public sealed record Timber(
    Species Species,
    GrainCut Cut,
    double DensityKgPerM3,
    double ModulusLongMPa,
    double ModulusAcrossMPa,
    double ShearMPa,
    double PoissonLong,
    double AcrossPerPercent,
    double ThroughPerPercent,
    bool DensityMeasured,
    bool LongMeasured,
    bool AcrossMeasured,
    bool ShearMeasured
)
{
    /// <summary>The species' row.</summary>
    public SpeciesFigures Figures => SpeciesTable.Of(Species);

    /// <summary>ν in the other direction: ν_RL = ν_LR E_R/E_L (symmetry of the elastic constants).</summary>
    public double PoissonAcross => PoissonLong * ModulusAcrossMPa / ModulusLongMPa;

    /// <summary>Bending stiffness of a plate per width, along the grain, N·mm: E_L h³/12(1 - ν_LR ν_RL).</summary>
    public double PlateLongNmm(double thicknessMm) =>
        Cube(thicknessMm) * ModulusLongMPa / (12 * (1 - (PoissonLong * PoissonAcross)));

    /// <summary>Bending stiffness of a plate per width, across the grain, N·mm.</summary>
    public double PlateAcrossNmm(double thicknessMm) =>
        Cube(thicknessMm) * ModulusAcrossMPa / (12 * (1 - (PoissonLong * PoissonAcross)));

    /// <summary>Twisting stiffness of a plate, G h³/12, N·mm.</summary>
    public double PlateTwistNmm(double thicknessMm) => Cube(thicknessMm) * ShearMPa / 12;

    /// <summary>The timber of a part.</summary>
    public static Timber Of(PartWoodDesign part)
    {
        ArgumentNullException.ThrowIfNull(part);
        SpeciesFigures row = SpeciesTable.Of(part.Species);
        bool quarter = part.Cut == GrainCut.Quarter;
        double along = 1000 * part.ModulusLongGPa ?? row.ModulusLongMPa;
        ElasticRatios ratios = row.Ratios;
        return new Timber(
            part.Species,
            part.Cut,
            part.DensityKgPerM3 ?? row.DensityKgPerM3,
            along,
            1000 * part.ModulusCrossGPa ?? along * (quarter ? ratios.RL : ratios.TL),
            1000 * part.ModulusShearGPa ?? along * (quarter ? ratios.ShearLR : ratios.ShearLT),
            quarter ? ratios.PoissonLR : ratios.PoissonLT,
            quarter ? row.RadialPerPercent : row.TangentialPerPercent,
            quarter ? row.TangentialPerPercent : row.RadialPerPercent,
            part.DensityKgPerM3 is not null,
            part.ModulusLongGPa is not null,
            part.ModulusCrossGPa is not null,
            part.ModulusShearGPa is not null
        );
    }

    private static double Cube(double thicknessMm) =>
        Guard.Positive(thicknessMm) * thicknessMm * thicknessMm;
}
