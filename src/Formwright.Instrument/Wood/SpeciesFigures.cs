using Formwright.Design.Sections;

namespace Formwright.Instrument.Wood;

/// <summary>One row of the species table, at 12 % moisture, with where each figure comes from (keys <c>wood-source.*</c> of the texts).</summary>
/// <param name="Species">Which wood.</param>
/// <param name="IsSoftwood">A conifer.</param>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <param name="DensitySource">Where the density comes from.</param>
/// <param name="BendingModulusMPa">Modulus from static bending tests, MPa. E along the grain is 1.1 times it.</param>
/// <param name="ModulusSource">Where the modulus comes from.</param>
/// <param name="RadialShrinkage">From green to oven-dry, share of the green size.</param>
/// <param name="TangentialShrinkage">From green to oven-dry, share of the green size.</param>
/// <param name="ShrinkageSource">Where the shrinkages come from.</param>
/// <param name="RadialPerPercent">Radial change per % of moisture, a share.</param>
/// <param name="TangentialPerPercent">Tangential change per % of moisture, a share.</param>
/// <param name="HasPublishedCoefficients">The changes stand in table 13-5; else they follow from the shrinkages.</param>
/// <param name="Ratios">Elastic ratios.</param>
/// <param name="RatioSource">Where the ratios come from.</param>
public sealed record SpeciesFigures(
    Species Species,
    bool IsSoftwood,
    double DensityKgPerM3,
    string DensitySource,
    double BendingModulusMPa,
    string ModulusSource,
    double RadialShrinkage,
    double TangentialShrinkage,
    string ShrinkageSource,
    double RadialPerPercent,
    double TangentialPerPercent,
    bool HasPublishedCoefficients,
    ElasticRatios Ratios,
    string RatioSource
)
{
    /// <summary>E along the grain over the modulus of a static bending test, whose deflection holds some shear (<i>Wood Handbook</i>, chapter 5).</summary>
    public const double LongOverBending = 1.10;

    /// <summary>Modulus along the grain, MPa.</summary>
    public double ModulusLongMPa => LongOverBending * BendingModulusMPa;

    /// <summary>Name in the reader's language.</summary>
    public string Name => InstrumentWords.Of[$"species.{Design.Reading.Choices.NameOf(Species)}"];
}
