using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Design.Sections;
using Formwright.Findings;

namespace Formwright.Instrument.Wood;

/// <summary>Holds the wood of a design against its rules.</summary>
internal static class WoodChecks
{
    // Bending and tap test that differ by more say that one was misread (common practice).
    private const double DifferPercent = 20;

    // Shear is under 1 % of the deflection above this span over thickness.
    private const double LeastSpanOverThickness = 45;

    internal static IEnumerable<Finding> Of(WoodPlan plan, InstrumentDesign design) =>
        Climate(plan, design).Concat(Tests(plan, design)).Concat(Species(design));

    private static IEnumerable<Finding> Climate(WoodPlan plan, InstrumentDesign design)
    {
        ClimateDesign climate = design.Climate;
        if (climate.ShopPercent > plan.DampestGluePercent)
        {
            yield return WoodRules.GluedTooDamp.Broken(
                climate.ShopPercent,
                plan.DampestGluePercent,
                "climate.shop_humidity",
                null,
                plan.SoundboardBars.Concat(plan.BackBars)
                    .MinBy(bar => bar.DampestGluePercent)!
                    .Name,
                plan.Dry.HumidityPercent
            );
        }

        foreach (
            (Air air, string key) in new[]
            {
                (plan.Dry, "dry_humidity"),
                (plan.Wet, "wet_humidity"),
            }
        )
        {
            double moisture = air.MoisturePercent;
            bool low = moisture < Movement.MinMoisturePercent;
            if (low || moisture > Movement.MaxMoisturePercent)
            {
                yield return WoodRules.OutOfRange.Broken(
                    moisture,
                    low ? Movement.MinMoisturePercent : Movement.MaxMoisturePercent,
                    $"climate.{key}",
                    null,
                    air.HumidityPercent
                );
            }
        }
    }

    private static IEnumerable<Finding> Tests(WoodPlan plan, InstrumentDesign design)
    {
        BoardTestDesign test = design.BoardTest;
        if (plan.Board.Tap is { Converged: false })
        {
            yield return WoodRules.TapNotFitted.Broken(
                test.TapLongHz ?? test.TapCrossHz ?? test.TapTwistHz ?? 0,
                0,
                "board_test.tap_long"
            );
        }

        if (
            plan.Board is { Tap: { Converged: true } tap, BendLongMPa: { } bend }
            && test.TapLongHz is not null
        )
        {
            double differ = 100 * Math.Abs((bend / tap.ModulusLongMPa) - 1);
            if (differ > DifferPercent)
            {
                yield return WoodRules.TestsDiffer.Broken(
                    differ,
                    DifferPercent,
                    "board_test.bend_deflection",
                    null,
                    bend / 1000,
                    tap.ModulusLongMPa / 1000
                );
            }
        }

        if (
            test is { BendSpanMm: { } span, ThicknessMm: { } thickness }
            && span < LeastSpanOverThickness * thickness
        )
        {
            yield return WoodRules.ShortSpan.Broken(
                span / thickness,
                LeastSpanOverThickness,
                "board_test.bend_span"
            );
        }

        if (plan.Board.DensityKgPerM3 is { } density)
        {
            double table = SpeciesTable.Of(design.Wood.Soundboard.Species).DensityKgPerM3;
            if (density < 0.6 * table || density > 1.6 * table)
            {
                yield return WoodRules.OddDensity.Broken(density, table, "board_test.mass");
            }
        }
    }

    private static IEnumerable<Finding> Species(InstrumentDesign design)
    {
        WoodDesign wood = design.Wood;
        (string Key, PartWoodDesign Part)[] parts =
        [
            ("soundboard", wood.Soundboard),
            ("braces", wood.Braces),
            ("back", wood.Back),
            ("back_bars", wood.BackBars),
            ("ribs", wood.Ribs),
            ("neck", wood.Neck),
            ("fingerboard", wood.Fingerboard),
            ("bridge", wood.Bridge),
        ];
        foreach ((string key, PartWoodDesign part) in parts)
        {
            SpeciesFigures row = SpeciesTable.Of(part.Species);
            bool memory =
                (row.DensitySource == "memory" && part.DensityKgPerM3 is null)
                || (row.ModulusSource == "memory" && part.ModulusLongGPa is null)
                || row.ShrinkageSource == "memory";
            if (memory)
            {
                yield return WoodRules.FromMemory.Broken(
                    0,
                    0,
                    $"wood.{key}.species",
                    null,
                    row.Name,
                    Choices.NameOf(part.Species)
                );
            }
        }
    }
}
