namespace Formwright.Instrument.Necks;

/// <summary>Width and thickness of the neck at one place.</summary>
/// <param name="AtMm">Distance from the nut, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness of the neck's wood, mm.</param>
public readonly record struct NeckPlace(double AtMm, double WidthMm, double ThicknessMm);
