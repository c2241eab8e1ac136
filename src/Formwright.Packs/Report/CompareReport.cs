using System.ComponentModel;
using Formwright.Trace.Comparing;

namespace Formwright.Packs.Report;

/// <summary>Two outlines beside each other.</summary>
public sealed record CompareReport(
    [property: Description("Largest distance from either to the other, mm.")] double LargestMm,
    [property: Description("Station of that place, mm.")] double LargestAtUMm,
    [property: Description("Root mean square distance, mm.")] double RmsMm,
    [property: Description("Area of the first, mm².")] double AreaMm2,
    [property: Description("Area of the second, mm².")] double OtherAreaMm2,
    [property: Description("By how much the second's area is larger, mm².")]
        double AreaDifferenceMm2,
    [property: Description(
        "Root mean square difference of the relative curvature plots, as a share of the first's own."
    )]
        double CharacterRmsShare,
    [property: Description("Largest such difference.")] double CharacterLargestShare,
    [property: Description("Widths side by side.")] IReadOnlyList<WidthPairReport> Widths
)
{
    public static CompareReport Of(OutlineComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return new CompareReport(
            comparison.LargestMm,
            comparison.LargestAtUMm,
            comparison.RmsMm,
            comparison.AreaMm2,
            comparison.OtherAreaMm2,
            comparison.AreaDifferenceMm2,
            comparison.Change.RmsShare,
            comparison.Change.LargestShare,
            [
                .. comparison.Widths.Select(row => new WidthPairReport(
                    row.UMm,
                    row.WidthMm,
                    row.OtherWidthMm,
                    row.DifferenceMm
                )),
            ]
        );
    }
}
