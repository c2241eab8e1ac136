using System.Collections.Immutable;

namespace Formwright.Fields.Plates;

/// <summary>The lowest modes of a plate.</summary>
/// <param name="Modes">In order of frequency, those of the plate moving as a rigid body left out.</param>
/// <param name="RigidCount">How many of these there are: 0 for a supported plate, 3 or 6 for a free one.</param>
/// <param name="Converged">The iteration met its tolerance.</param>
/// <param name="Missed">How many modes among these were missed; 0 unless something went wrong.</param>
public sealed record PlateModes(
    ImmutableArray<PlateMode> Modes,
    int RigidCount,
    bool Converged,
    int Missed
);
