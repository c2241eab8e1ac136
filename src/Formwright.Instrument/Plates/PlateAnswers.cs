using Formwright.Fields.Plates;

namespace Formwright.Instrument.Plates;

/// <summary>How a soundboard answers unit loads on its bridge, with its rim hinged and clamped.</summary>
/// <param name="Bridge">The bridge's footprint.</param>
/// <param name="HingedModel">The plate with its rim hinged.</param>
/// <param name="ClampedModel">The same mesh with its rim clamped.</param>
/// <param name="Hinged">Answer with the rim hinged.</param>
/// <param name="Clamped">Answer with the rim clamped.</param>
public sealed record PlateAnswers(
    PlateSpot Bridge,
    PlateModel HingedModel,
    PlateModel ClampedModel,
    BridgeInfluence Hinged,
    BridgeInfluence Clamped
);
