using Formwright.Curves;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>A crossing of two braces.</summary>
/// <param name="Other">Name of the other brace.</param>
/// <param name="AlongMm">Where it is along this brace's line, mm.</param>
/// <param name="Place">Where it is on the soundboard, body frame.</param>
public readonly record struct BraceLap(string Other, double AlongMm, Point Place);
