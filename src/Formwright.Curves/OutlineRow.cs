namespace Formwright.Curves;

/// <summary>One line of an outline's table.</summary>
/// <param name="UMm">Station from the heel, mm.</param>
/// <param name="WidthMm">Full width, mm.</param>
/// <param name="CurvaturePerMm">Curvature there, 1/mm: positive where the body is convex (bouts), negative where it is hollow (waist).</param>
public readonly record struct OutlineRow(double UMm, double WidthMm, double CurvaturePerMm);
