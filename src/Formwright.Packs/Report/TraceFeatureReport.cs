using System.ComponentModel;
using Formwright.Trace;

namespace Formwright.Packs.Report;

/// <summary>A bout or waist of a traced outline.</summary>
public sealed record TraceFeatureReport(
    [property: Description("Station from the heel, mm.")] double AtMm,
    [property: Description("Full width, mm.")] double WidthMm,
    [property: Description("Radius there, mm.")] double RadiusMm
)
{
    internal static TraceFeatureReport? Of(TracedFeature? feature) =>
        feature is null ? null : new(feature.UMm, feature.WidthMm, feature.RadiusMm);
}
