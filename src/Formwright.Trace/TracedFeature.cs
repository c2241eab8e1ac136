namespace Formwright.Trace;

/// <summary>A bout or waist of a fair outline.</summary>
/// <param name="UMm">Station from the heel, mm.</param>
/// <param name="WidthMm">Full width, mm.</param>
/// <param name="RadiusMm">Radius of the outline there, mm.</param>
public sealed record TracedFeature(double UMm, double WidthMm, double RadiusMm);
