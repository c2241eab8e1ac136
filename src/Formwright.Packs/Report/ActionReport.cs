using System.ComponentModel;
using System.Text.Json.Serialization;
using Formwright.Instrument.Action;

namespace Formwright.Packs.Report;

/// <summary>The height chain's figures.</summary>
public sealed record ActionReport(
    [property: Description("On the board, without strings.")] ChainReport Unloaded,
    [property: Description("Strung, at pitch, settled.")] ChainReport Loaded,
    [property: Description(
        "Rise of the nut under the strings, creep and rotation at the join included, mm."
    )]
        double NutRiseMm,
    [property: Description("Bow of the strung neck from the chord nut to join, mm.")] double BowMm,
    [property: Description(
        "Straight edge on the frets over the soundboard at the saddle, box off the board, no strings, mm."
    )]
        double ProjectionAtSaddleMm,
    [property: Description(
        "Combined standard uncertainty of the action at fret 12, lowest string, mm (GUM)."
    )]
        double CombinedUncertaintyMm,
    [property: Description("Every tolerance at its worst end at once, lowest string, mm.")]
        double WorstCaseMm,
    [property: Description(
        "What each input does to the action of the lowest string at fret 12, costliest first."
    )]
        IReadOnlyList<SensitivityReport> Sensitivities,
    [property:
        Description(
            "95 of 100 builds land between these, lowest and highest string, mm; absent without builds."
        ),
        JsonPropertyName("interval_95_mm")
    ]
        SidedInterval? Interval95Mm,
    [property: Description(
        "Share of builds whose action lands in the maker's band; absent without builds."
    )]
        double? ChanceInBand,
    [property: Description("Ramp with the best chance of a saddle within the bridge's range, mm.")]
        double? BestRampMm,
    [property: Description(
        "Height of a saddle blank from which 975 of 1000 builds can be cut, mm."
    )]
        double? SaddleBlankMm
)
{
    internal static ActionReport Of(NeckAndAction action) =>
        new(
            ChainReport.Of(action.OnBoard),
            ChainReport.Of(action.Strung),
            action.Strung.NutRiseMm,
            action.Strung.BowMm,
            action.Free.ProjectionMm,
            action.ActionBass.CombinedUncertainty,
            action.ActionBass.WorstCase,
            [.. action.ActionBass.Ranked.Select(SensitivityReport.Of)],
            action.Chance is { } chance
                ? new SidedInterval(
                    [chance.ActionBassMm.Low, chance.ActionBassMm.High],
                    [chance.ActionTrebleMm.Low, chance.ActionTrebleMm.High]
                )
                : null,
            action.Chance?.InBand,
            action.Chance?.BestRampMm,
            action.Chance?.SaddleBlankMm
        );
}
