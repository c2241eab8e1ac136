using System.ComponentModel;
using Formwright.Instrument.Body.Back;

namespace Formwright.Packs.Report;

/// <summary>The back's figures.</summary>
public sealed record BackReport(
    [property: Description("Greatest depth inside on the centreline, mm.")] double DeepestMm,
    [property: Description("Its station from the heel, mm.")] double DeepestAtMm,
    [property: Description("Rise of the arch along the centreline over its chord, mm.")]
        double LongRiseMm,
    [property: Description("Rise of the arch across at the lower bout, mm.")] double CrossRiseMm,
    [property:
        Description("Volume of the box inside, litres."),
        System.Text.Json.Serialization.JsonPropertyName("volume_l")
    ]
        double VolumeL,
    [property: Description("Mass of the plate without bars, g.")] double MassG
)
{
    internal static BackReport Of(BackPlan back) =>
        new(
            back.DeepestMm,
            back.DeepestAtMm,
            back.LongRiseMm,
            back.CrossRiseMm,
            back.VolumeL,
            back.MassG
        );
}
