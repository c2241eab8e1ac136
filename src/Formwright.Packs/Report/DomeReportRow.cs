using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One station of the dome.</summary>
public sealed record DomeReportRow(
    [property: Description("Station from the heel, mm.")] double UMm,
    [property: Description("Height over the rim, mm.")] double HeightMm
);
