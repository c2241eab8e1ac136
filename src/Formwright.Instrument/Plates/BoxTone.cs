namespace Formwright.Instrument.Plates;

/// <summary>The soundboard's main mode and what the air of the box makes of it.</summary>
/// <param name="BoardHz">The soundboard alone, Hz.</param>
/// <param name="ClosedHz">Over the box with the soundhole stopped, Hz.</param>
/// <param name="LowHz">The lower of the two peaks of the box, mostly air, Hz.</param>
/// <param name="HighHz">The higher one, mostly soundboard, Hz.</param>
public sealed record BoxTone(double BoardHz, double ClosedHz, double LowHz, double HighHz);
