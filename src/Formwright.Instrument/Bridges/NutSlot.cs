namespace Formwright.Instrument.Bridges;

/// <summary>A slot of the nut.</summary>
/// <param name="Number">Number of the string: 1 is the treble-most.</param>
/// <param name="YMm">Place across, towards the treble side of the frame, mm.</param>
/// <param name="FromBassEdgeMm">From the nut's bass end, mm.</param>
/// <param name="WidthMm">Width: the string's diameter, mm.</param>
/// <param name="BottomMm">Bottom of the slot over the nut's underside, mm.</param>
/// <param name="TopMm">Height of the nut that holds the string there, mm.</param>
public readonly record struct NutSlot(
    int Number,
    double YMm,
    double FromBassEdgeMm,
    double WidthMm,
    double BottomMm,
    double TopMm
);
