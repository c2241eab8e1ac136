using System.ComponentModel;
using Formwright.Instrument;

namespace Formwright.Packs.Report;

/// <summary>The outline's figures.</summary>
public sealed record OutlineReport(
    [property: Description("Length of half the outline, heel to tail, mm.")] double HalfPerimeterMm,
    [property: Description("Area within the outline, mm².")] double AreaMm2,
    [property: Description("Station of the area's centroid from the heel, mm.")] double CentroidUMm,
    [property: Description("Monotone runs of curvature on half the outline.")] int CurvaturePieces,
    [property: Description("Smallest radius anywhere, mm.")] double TightestRadiusMm,
    [property: Description("Smallest radius where the outline is round outwards, mm.")]
        double TightestBoutMm,
    [property: Description("Smallest radius at the waist, mm.")] double TightestWaistMm,
    [property: Description("By how much the half perimeter moved in the last refinement, mm.")]
        double RefinementMm,
    [property: Description("Width and curvature every 10 mm.")]
        IReadOnlyList<OutlineReportRow> Table
)
{
    internal static OutlineReport Of(Guitar guitar) =>
        new(
            guitar.Figures.HalfPerimeterMm,
            guitar.Figures.AreaMm2,
            guitar.Figures.CentroidUMm,
            guitar.Figures.CurvaturePieces,
            guitar.Figures.TightestRadiusMm,
            guitar.Figures.TightestBoutMm,
            guitar.Figures.TightestWaistMm,
            guitar.Solution.RefinementMm,
            [
                .. guitar.Figures.Table.Select(row => new OutlineReportRow(
                    row.UMm,
                    row.WidthMm,
                    row.CurvaturePerMm
                )),
            ]
        );
}
