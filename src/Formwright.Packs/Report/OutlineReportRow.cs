using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One station of the outline.</summary>
public sealed record OutlineReportRow(
    [property: Description("Station from the heel, mm.")] double UMm,
    [property: Description("Full width, mm.")] double WidthMm,
    [property: Description(
        "Curvature, 1/mm, positive on the bouts, negative where the outline is hollow (the waist)."
    )]
        double CurvaturePerMm
);
