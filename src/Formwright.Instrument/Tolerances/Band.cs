namespace Formwright.Instrument.Tolerances;

/// <summary>A range that one output is to land in.</summary>
/// <param name="Output">Which output.</param>
/// <param name="Low">Lower end, included.</param>
/// <param name="High">Upper end, included.</param>
public readonly record struct Band(int Output, double Low, double High);
