namespace Formwright.Curves;

/// <summary>What <see cref="OffsetValidator"/> found.</summary>
/// <param name="TooNearMm">By how much a place of the offset is nearer to the source than the distance, at worst, mm.</param>
/// <param name="TooNearAt">Where.</param>
/// <param name="TooFarMm">By how much a place of it is farther, at worst, mm.</param>
/// <param name="TooFarAt">Where.</param>
/// <param name="MissedMm">
/// How far from the offset a place is that should be on it (the end of a source's normal that is nowhere too near), at worst, mm; measured
/// to the sampled offset, so a gap shorter than the spacing stays unseen and the sagitta of a sample is included.
/// </param>
/// <param name="MissedAt">Where.</param>
/// <param name="Places">How many places were measured.</param>
public sealed record OffsetAudit(
    double TooNearMm,
    Point TooNearAt,
    double TooFarMm,
    Point TooFarAt,
    double MissedMm,
    Point MissedAt,
    int Places
);
