using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A brace at one place of its line.</summary>
/// <param name="At">Place on the plate, mm.</param>
/// <param name="HeightMm">Height of the brace there, mm; linear from one station to the next, 0 allowed (scooped to nothing).</param>
public readonly record struct BraceStation(Point At, double HeightMm);
