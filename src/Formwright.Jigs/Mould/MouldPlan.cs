using Formwright.Findings;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Mould;

/// <summary>Both halves of a mould.</summary>
/// <param name="LayersMm">Thickness of each layer from the board up, mm.</param>
/// <param name="Parts">Layers as parts.</param>
/// <param name="Fasteners">Dowels and bolts of both halves, treble half first, from heel to tail.</param>
/// <param name="BoltLengthMm">Shortest bolt that holds in the captive nut of the top layer, mm.</param>
/// <param name="DowelLengthMm">Length of a locating dowel: board and two layers, less 2 mm.</param>
/// <param name="Findings">What to see to.</param>
public sealed record MouldPlan(
    IReadOnlyList<double> LayersMm,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<Fastener> Fasteners,
    double BoltLengthMm,
    double DowelLengthMm,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Lowest and highest that the halves may become, mm: the same where the layers were measured, else what EN 315 allows.</summary>
    public (double LeastMm, double MostMm) StackMm { get; init; }

    /// <summary>The bolt; null where the mould can't be made.</summary>
    public MouldBolt? Bolt { get; init; }

    /// <summary>How far a half can move in its dowels.</summary>
    public DowelPlay? Play { get; init; }

    /// <summary>How the layers are brought to the line.</summary>
    public MouldCutting? Cutting { get; init; }

    /// <summary>Height of the halves over the board, mm.</summary>
    public double HeightMm => LayersMm.Sum();
}
