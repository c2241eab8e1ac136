namespace Formwright.Instrument.NeckBlanks;

/// <summary>A slot of the heel for a rib, and its wedge. Both sides are alike.</summary>
/// <param name="DepthMm">Depth from the block's side, mm.</param>
/// <param name="BetweenMm">Wood left between the two slots, mm.</param>
/// <param name="WidthFrontMm">Width at the soundboard, mm: rib and thin end of the wedge.</param>
/// <param name="WidthBackMm">Width at the back, mm: rib and thick end of the wedge.</param>
/// <param name="HeightMm">Height: that of the rib there, mm.</param>
/// <param name="WedgeTaperDeg">Taper of the wedge, degrees.</param>
public sealed record HeelSlot(
    double DepthMm,
    double BetweenMm,
    double WidthFrontMm,
    double WidthBackMm,
    double HeightMm,
    double WedgeTaperDeg
);
