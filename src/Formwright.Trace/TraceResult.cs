using Formwright.Curves;
using Formwright.Trace.Aligning;
using Formwright.Trace.Files;

namespace Formwright.Trace;

/// <summary>What a trace came to. All lengths mm, in the body frame (u from the heel, y towards the treble side).</summary>
/// <param name="File">The file it came from.</param>
/// <param name="Fair">The fair outline, symmetric.</param>
/// <param name="Features">Its bouts, waist and ends.</param>
/// <param name="Bumps">Where the trace leaves the fair curve of its side, the worst first.</param>
/// <param name="Floor">Noise and what can be told in spite of it.</param>
/// <param name="Alignment">How the trace was laid on the centreline.</param>
/// <param name="ScaleFactor">By what the file's lengths were multiplied to meet the known length; 1 where none was given.</param>
/// <param name="Misfit">How the fair outline meets the points.</param>
/// <param name="Differences">Both sides beside each other; empty where one side was traced.</param>
/// <param name="Treble">The points of the treble side, y ≥ 0; empty where it was not traced.</param>
/// <param name="Bass">The points of the bass side, y ≤ 0; empty where it was not traced.</param>
public sealed record TraceResult(
    TraceFile File,
    Outline Fair,
    TracedFeatures Features,
    IReadOnlyList<Bump> Bumps,
    NoiseFloor Floor,
    TraceAlignment Alignment,
    double ScaleFactor,
    TraceMisfit Misfit,
    IReadOnlyList<SideDifference> Differences,
    IReadOnlyList<Point> Treble,
    IReadOnlyList<Point> Bass
)
{
    /// <summary>
    /// Features whose fairest curve meets the trace within the tolerance, bumps left out: then they are all there is to say of the
    /// outline. Null where the trace runs otherwise between its bouts.
    /// </summary>
    public OutlineFeatures? Plain { get; init; }

    /// <summary>
    /// How far the points of a side stand off the fair curve of that side, along it: x the arc length from the heel, y the distance, proud
    /// above 0, mm, in order.
    /// </summary>
    public required IReadOnlyDictionary<TraceSide, IReadOnlyList<Point>> StandOff { get; init; }

    /// <summary>Lengths of stretches where the shape is not understood well enough to tell a bump from it; as a rule there are none.</summary>
    public IReadOnlyList<(TraceSide Side, double FromUMm, double ToUMm)> Unsure { get; init; } = [];

    /// <summary>The same with a fair outline scaled by a factor next to 1, and the features that stand in it.</summary>
    internal TraceResult Scaled(double factor)
    {
        TracedFeature? Feature(TracedFeature? feature) =>
            feature is null
                ? null
                : new(factor * feature.UMm, factor * feature.WidthMm, factor * feature.RadiusMm);
        return this with
        {
            Fair = new Outline(Fair.Half.Scaled(factor)),
            Features = Features with
            {
                BodyLengthMm = factor * Features.BodyLengthMm,
                UpperBout = Feature(Features.UpperBout),
                Waist = Feature(Features.Waist),
                LowerBout = Feature(Features.LowerBout),
            },
        };
    }
}
