namespace Formwright.Findings;

/// <summary>Where a finding shows on a drawing, in the instrument frame (design: x from the nut, y towards the treble side).</summary>
/// <param name="XMm">Along the centreline from the nut, mm.</param>
/// <param name="YMm">Across, towards the treble side, mm.</param>
public readonly record struct Place(double XMm, double YMm);
