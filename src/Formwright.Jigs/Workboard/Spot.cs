namespace Formwright.Jigs.Workboard;

/// <summary>A hole to drill to a depth stop before the relief is carved.</summary>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="YBMm">From the centreline, workboard frame (towards the bass side), mm.</param>
/// <param name="DepthMm">Depth, mm: a whole tenth, and nowhere under the cutter deeper than the relief.</param>
public sealed record Spot(double XMm, double YBMm, double DepthMm);
