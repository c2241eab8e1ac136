using Formwright.Curves;

namespace Formwright.Instrument.Bridges;

/// <summary>A notch across a caul for a brace.</summary>
/// <param name="Brace">Name of the brace.</param>
/// <param name="From">Where its middle enters, body frame.</param>
/// <param name="To">Where it leaves.</param>
/// <param name="WidthMm">Width, mm: the brace's and 1 mm each side.</param>
/// <param name="DepthMm">Depth, mm: the brace's and 1 mm.</param>
public sealed record CaulNotch(string Brace, Point From, Point To, double WidthMm, double DepthMm);
