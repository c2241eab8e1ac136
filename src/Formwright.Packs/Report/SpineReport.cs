using System.ComponentModel;
using Formwright.Jigs.Spine;

namespace Formwright.Packs.Report;

/// <summary>Figures of the spine under the workboard.</summary>
public sealed record SpineReport(
    [property: Description("Layers of the spine.")] int Layers,
    [property: Description("Depth of the spine below the board, mm.")] double DepthMm,
    [property: Description("Bending stiffness of board and spine under the neck, N·mm².")]
        double NeckStiffnessNmm2,
    [property: Description("The same without the spine, N·mm².")] double BareStiffnessNmm2,
    [property: Description("Sag in the middle between the feet under the design's load, mm.")]
        double SagMm,
    [property: Description("Sag of the tail under the same load there, mm.")] double TailSagMm,
    [property: Description(
        "What the design's difference in air between the faces adds to the ramp, mm."
    )]
        double WarpMm,
    [property: Description("The same without the spine, mm.")] double BareWarpMm,
    [property: Description(
        "Fewest layers that keep the warp within the ramp's tolerance; absent where none of those tried does."
    )]
        int? LeastLayers,
    [property: Description("Warp with every number of layers, none first, mm.")]
        IReadOnlyList<double> WarpByLayersMm,
    [property: Description("Where the spine ends, from the nut, mm.")] double SpineEndMm,
    [property: Description("Face of the foot at the tail, from the nut, mm.")] double TailFootMm,
    [property: Description("Height of a foot, mm.")] double FootHeightMm,
    [property: Description("How far a clamp must reach in at the tail block, mm.")]
        double ClampReachMm
)
{
    internal static SpineReport Of(SpinePlan plan) =>
        new(
            plan.Design.Layers,
            plan.DepthMm,
            plan.NeckStiffnessNmm2,
            plan.BareStiffnessNmm2,
            plan.SagMm,
            plan.TailSagMm,
            plan.WarpMm,
            plan.BareWarpMm,
            plan.LeastLayers,
            [.. plan.ByLayers.Select(row => row.WarpMm)],
            plan.Feet.SpineEndMm,
            plan.Feet.TailMm,
            plan.Feet.HeightMm,
            plan.Feet.ReachMm
        );
}
