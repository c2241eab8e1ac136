using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One place of the flat rib.</summary>
public sealed record RibHeightReport(
    [property: Description("From the tail end, mm.")] double AlongMm,
    [property: Description("Edge at the soundboard, mm.")] double FrontMm,
    [property: Description("Edge at the back, mm.")] double BackMm
);
