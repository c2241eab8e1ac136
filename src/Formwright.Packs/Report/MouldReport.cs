using System.ComponentModel;
using Formwright.Jigs.Mould;

namespace Formwright.Packs.Report;

/// <summary>The mould's figures.</summary>
public sealed record MouldReport(
    [property: Description("Number of layers in each half.")] int Layers,
    [property: Description("Height of the halves over the board, mm.")] double HeightMm,
    [property: Description("Shortest bolt, mm.")] double BoltLengthMm,
    [property: Description("Length of a locating dowel, mm.")] double DowelLengthMm,
    [property: Description(
        "Lowest that the halves may become, mm: EN 315 where the layers were not measured."
    )]
        double HeightLeastMm,
    [property: Description("Highest that the halves may become, mm.")] double HeightMostMm,
    [property: Description("Longest bolt that stays under the top, mm.")] double? BoltMostMm,
    [property: Description("Bolt length in trade; absent where none fits, mm.")]
        double? BoltTradeMm,
    [property: Description("Diameter of the bolts' heads, mm.")] double? BoltHeadMm,
    [property: Description("Distance of the outermost two dowels of a half, mm.")]
        double? DowelSpacingMm,
    [property: Description("Greatest move of the inner face in the dowels' play, mm.")]
        double? FarEndMm,
    [property: Description("Smallest hollow radius of the inner face, mm.")]
        double? TightestHollowMm,
    [property: Description("Radius of the bearing cutter, mm.")] double? CutterRadiusMm,
    [property: Description("Bearing that lets the cutter in by the rebate's width, diameter, mm.")]
        double? RebateBearingMm,
    [property: Description("Faces of mould and board that must be kept free of glue.")]
        IReadOnlyList<string> FacesNotGlued,
    [property: Description("Dowels and bolts of both halves, workboard frame.")]
        IReadOnlyList<FastenerReport> Fasteners
)
{
    internal static MouldReport Of(MouldPlan plan) =>
        new(
            plan.LayersMm.Count,
            plan.HeightMm,
            plan.BoltLengthMm,
            plan.DowelLengthMm,
            plan.StackMm.LeastMm,
            plan.StackMm.MostMm,
            plan.Bolt?.MostMm,
            plan.Bolt?.LengthMm,
            plan.Bolt?.HeadDiameterMm,
            plan.Play?.SpacingMm,
            plan.Play?.FarEndMm,
            plan.Cutting?.TightestHollowMm,
            plan.Cutting?.CutterRadiusMm,
            plan.Cutting?.RebateBearingMm,
            [.. GlueFace.All.Where(face => !face.IsGlued).Select(face => face.Key)],
            [.. plan.Fasteners.Select(FastenerReport.Of)]
        );
}
