using System.ComponentModel;
using Formwright.Jigs.Mould;

namespace Formwright.Packs.Report;

/// <summary>The mould's figures.</summary>
public sealed record MouldReport(
    [property: Description("Number of layers in each half.")] int Layers,
    [property: Description("Height of the halves over the board, mm.")] double HeightMm,
    [property: Description("Shortest bolt, mm.")] double BoltLengthMm,
    [property: Description("Length of a locating dowel, mm.")] double DowelLengthMm,
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
            [.. plan.Fasteners.Select(FastenerReport.Of)]
        );
}
