namespace Formwright.Jigs.Workboard;

/// <summary>What lies open under the end of a brace when it is pressed down on the soundboard.</summary>
/// <param name="Brace">Name of the brace: <c>F1</c>.</param>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="YBMm">From the centreline, workboard frame (towards the bass side), mm.</param>
/// <param name="GapMm">Between the domed soundboard and the hollow, mm.</param>
/// <param name="IsHeld">Whether the gap is so small that it holds.</param>
public sealed record BraceEndGap(string Brace, double XMm, double YBMm, double GapMm, bool IsHeld);
