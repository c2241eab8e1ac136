using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Bridges;
using Formwright.Jigs.Brackets;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Spine;
using Formwright.Jigs.Templates;
using Formwright.Jigs.Workboard;

namespace Formwright.Jigs;

/// <summary>All tooling of one instrument.</summary>
/// <param name="Workboard">The board it lies on.</param>
/// <param name="Spine">The beam and the feet under it.</param>
/// <param name="Mould">The halves around it.</param>
/// <param name="Templates">Half, full and mating templates of the outline; placement, fingerboard, fret-slot rule, gauges over the dome.</param>
public sealed record Tooling(
    WorkboardPlan Workboard,
    SpinePlan Spine,
    MouldPlan Mould,
    IReadOnlyList<Part> Templates
)
{
    /// <summary>The slotted board with its brackets, where the design asks for one.</summary>
    public JigPlan? Jig { get; init; }

    /// <summary>Every part that is cut. The grain of board and spine runs along the neck, where they must be stiff (common practice).</summary>
    public IEnumerable<Part> Parts =>
        [
            Workboard.Board with
            {
                Grain = PartGrain.AlongLength,
            },
            .. Workboard.Parts,
            .. Spine.Parts.Select(part =>
                part.Id == "spine-layer" ? part with { Grain = PartGrain.AlongLength } : part
            ),
            .. Mould.Parts,
            .. Templates,
            .. Jig?.Parts ?? [],
        ];

    /// <summary>What to see to.</summary>
    public IReadOnlyList<Finding> Findings =>
        [.. Workboard.Findings, .. Spine.Findings, .. Mould.Findings, .. Jig?.Findings ?? []];

    /// <summary>The tooling of a guitar.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="soundboard">Its soundboard where it is there already; null to work it out.</param>
    public static Tooling Of(Guitar guitar, SoundboardPlan? soundboard = null)
    {
        MouldPlan mould = MouldMaker.Of(guitar);
        return new Tooling(
            WorkboardMaker.Of(guitar, mould, soundboard),
            SpinePlan.Of(guitar, mould),
            mould,
            [.. TemplateMaker.Of(guitar), .. BenchTemplates.Of(guitar)]
        )
        {
            Jig = guitar.Design.Jig.Make ? JigMaker.Of(guitar) : null,
        };
    }

    /// <summary>
    /// The same with the template for bars, rosette and bridge made for the bridge as it is built: its saddle slot stands where the strings' compensation
    /// wants the saddle, so the window of a bridge on the bare scale would put it too near the nut by as much.
    /// </summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="bridge">Its bridge.</param>
    public Tooling WithBridge(Guitar guitar, BridgePlan bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        Part before = Templates.Single(part => part.Id == BenchTemplates.PlacementId);
        Part placed = BenchTemplates.WithBridge(before, guitar, bridge.Middle);
        // The same tooling, if the bridge has not moved: whoever holds it sees that nothing changed.
        return before
            .Insides.SelectMany(inside => inside.Vertices)
            .SequenceEqual(placed.Insides.SelectMany(inside => inside.Vertices))
            ? this
            : this with
            {
                Templates = [.. Templates.Select(part => part == before ? placed : part)],
            };
    }
}
