using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>How a part moves with the air.</summary>
public sealed record MovementReport(
    [property: Description("The part and its direction.")] string Part,
    [property: Description("The dimension in the shop, mm.")] double DimensionMm,
    [property: Description("Change in the driest air, mm.")] double DryMm,
    [property: Description("Change in the dampest air, mm.")] double WetMm
);
