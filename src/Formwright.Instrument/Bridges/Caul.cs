using Formwright.Instrument.Body;

namespace Formwright.Instrument.Bridges;

/// <summary>A block that bears on the inside of the soundboard while something is glued outside it: hollow or round to fit, notched for braces.</summary>
/// <param name="LengthMm">Length across, mm.</param>
/// <param name="WidthMm">Width along the centreline, mm.</param>
/// <param name="Across">Face across, along its middle, from bass to treble.</param>
/// <param name="Along">Face along the centreline.</param>
/// <param name="Notches">Notches for the braces under it.</param>
public sealed record Caul(
    double LengthMm,
    double WidthMm,
    Gauge Across,
    Gauge Along,
    IReadOnlyList<CaulNotch> Notches
);
