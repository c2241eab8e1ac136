namespace Formwright.Instrument.Wood;

/// <summary>How far a dimension of a part moves when it leaves the shop.</summary>
/// <param name="Part">Key of the part's name (<c>part.soundboard</c> …).</param>
/// <param name="DimensionMm">The dimension in the shop, mm.</param>
/// <param name="PerPercent">Its coefficient, share per % of moisture.</param>
/// <param name="DryMm">Change in the driest air, mm (shrinkage negative).</param>
/// <param name="WetMm">Change in the dampest air, mm.</param>
public sealed record PartMovement(
    string Part,
    double DimensionMm,
    double PerPercent,
    double DryMm,
    double WetMm
);
