namespace Formwright.Jigs.Workboard;

/// <summary>Depth of the relief and what it leaves under the dome at one place; the board is the same on both sides.</summary>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="AcrossMm">From the centreline, to either side, mm.</param>
/// <param name="DepthMm">Depth of the relief, mm.</param>
/// <param name="ClearanceMm">What is left under the dome, mm.</param>
public sealed record ClearanceRow(double XMm, double AcrossMm, double DepthMm, double ClearanceMm);
