namespace Formwright.Jigs.Mould;

/// <summary>The bolt from under the board into the captive nut.</summary>
/// <param name="LeastMm">Shortest length under the head that fills the nut by one diameter (or all of it), mm.</param>
/// <param name="MostMm">Longest that does not stand over the top, mm.</param>
/// <param name="LengthMm">The shortest length in trade between them, mm; null where there is none.</param>
/// <param name="FitsAnySheet">That length also fits the thinnest and the thickest stack that the sheets may give (EN 315).</param>
/// <param name="HeadDiameterMm">Diameter of the head, mm.</param>
/// <param name="HeadHeightMm">Height of the head, mm.</param>
public sealed record MouldBolt(
    double LeastMm,
    double MostMm,
    double? LengthMm,
    bool FitsAnySheet,
    double HeadDiameterMm,
    double HeadHeightMm
);
