using System.ComponentModel;
using Formwright.Instrument.Wood;

namespace Formwright.Packs.Report;

/// <summary>What the air does to the wood.</summary>
public sealed record WoodReport(
    [property: Description("Humidity to glue at, %.")] double GluePercent,
    [property: Description("Humidity at which the arches stray least over the range, %.")]
        double BestGluePercent,
    [property: Description(
        "Dampest shop with which every arch keeps half of itself in the driest air, %."
    )]
        double DampestGluePercent,
    [property: Description("Density of the soundboard's wood, kg/m³.")] double BoardDensityKgPerM3,
    [property: Description("Its modulus along the grain, MPa.")] double BoardModulusLongMpa,
    [property: Description("Its modulus across the grain, MPa.")] double BoardModulusCrossMpa,
    [property: Description("Its shear modulus, MPa.")] double BoardShearMpa,
    [property: Description(
        "Whether the modulus along the grain was measured; else the species table's."
    )]
        bool BoardMeasured,
    [property: Description(
        "Thickness at which the soundboard has the wanted stiffness along the grain, mm."
    )]
        double ThicknessForLongMm,
    [property: Description("The same across the grain, mm.")] double ThicknessForCrossMm,
    [property: Description("The same for both, geometric mean, mm.")] double ThicknessForBothMm,
    [property: Description("Thickness at which it has the wanted mass, mm.")]
        double ThicknessForMassMm,
    [property: Description(
        "Bars of soundboard and back: rise over the ends in dry air, as glued, in damp air."
    )]
        IReadOnlyList<ArchReport> Arches,
    [property: Description("What parts shrink and swell against the air of the shop.")]
        IReadOnlyList<MovementReport> Movements
)
{
    internal static WoodReport Of(WoodPlan wood) =>
        new(
            wood.GluePercent,
            wood.BestGluePercent,
            wood.DampestGluePercent,
            wood.Board.Timber.DensityKgPerM3,
            wood.Board.Timber.ModulusLongMPa,
            wood.Board.Timber.ModulusAcrossMPa,
            wood.Board.Timber.ShearMPa,
            wood.Board.Timber.LongMeasured,
            wood.Thickness.ForLongMm,
            wood.Thickness.ForCrossMm,
            wood.Thickness.ForBothMm,
            wood.Thickness.ForMassMm,
            [
                .. wood
                    .SoundboardBars.Concat(wood.BackBars)
                    .Select(bar => new ArchReport(
                        bar.Name,
                        bar.Dry.RiseMm,
                        bar.Glued.RiseMm,
                        bar.Wet.RiseMm
                    )),
            ],
            [
                .. wood.Movements.Select(part => new MovementReport(
                    part.Part,
                    part.DimensionMm,
                    part.DryMm,
                    part.WetMm
                )),
            ]
        );
}
