using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>Widths of two outlines at a station.</summary>
public sealed record WidthPairReport(
    [property: Description("Station from the heel, mm.")] double UMm,
    [property: Description("Width of the first, mm.")] double WidthMm,
    [property: Description("Width of the second, mm.")] double OtherWidthMm,
    [property: Description("By how much the second is wider, mm.")] double DifferenceMm
);
