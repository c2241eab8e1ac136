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
        double DampestGluePercent
)
{
    internal static WoodReport Of(WoodPlan wood) =>
        new(wood.GluePercent, wood.BestGluePercent, wood.DampestGluePercent);
}
