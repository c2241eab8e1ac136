namespace Formwright.Instrument.Action;

/// <summary>One fret of the fret table.</summary>
/// <param name="Fret">Its number; 0 is the nut.</param>
/// <param name="FromNutMm">Distance from the nut, mm.</param>
/// <param name="FromLastMm">Distance from the fret before, mm.</param>
/// <param name="BoardWidthMm">Width of the fingerboard there, mm.</param>
/// <param name="BoardMm">Thickness of the fingerboard there on the centreline, over neck or soundboard, mm.</param>
/// <param name="EdgeBassMm">Side of the string nearest the frame's bass edge to that edge, mm.</param>
/// <param name="EdgeTrebleMm">The same on the treble edge, mm.</param>
public sealed record FretRow(
    int Fret,
    double FromNutMm,
    double FromLastMm,
    double BoardWidthMm,
    double BoardMm,
    double EdgeBassMm,
    double EdgeTrebleMm
);
