namespace Formwright.Instrument.Bridges;

/// <summary>Where a string meets the bridge.</summary>
/// <param name="Number">Number that players use: 1 is the treble-most.</param>
/// <param name="YMm">Place across at saddle and tie hole, towards the treble side, mm.</param>
/// <param name="SaddleXMm">Where the string leaves the saddle, instrument frame, mm.</param>
/// <param name="SaddleFromFrontMm">The same from the bridge's front edge, mm.</param>
/// <param name="DomeMm">Height of the soundboard over the datum under it, mm.</param>
public readonly record struct BridgeString(
    int Number,
    double YMm,
    double SaddleXMm,
    double SaddleFromFrontMm,
    double DomeMm
);
