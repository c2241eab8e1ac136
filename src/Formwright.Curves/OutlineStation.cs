namespace Formwright.Curves;

/// <summary>A bout or waist: where it is, how wide, and how round if that is fixed.</summary>
/// <param name="UMm">Station along the centreline from the heel, mm.</param>
/// <param name="WidthMm">Full width across the body, mm.</param>
/// <param name="RadiusMm">Radius of the outline there, mm, or null to leave it to the fair curve; 0 or less never.</param>
public readonly record struct OutlineStation(double UMm, double WidthMm, double? RadiusMm = null);
