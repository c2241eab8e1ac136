using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>A field at one place of a straight line.</summary>
/// <param name="AlongMm">Distance from the start of the line, mm.</param>
/// <param name="Place">The place.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="Slope">Rise per mm along the line.</param>
/// <param name="Curvature">Curvature of the section along the line, 1/mm, positive in a hollow.</param>
public readonly record struct ProfilePoint(
    double AlongMm,
    Point Place,
    double HeightMm,
    double Slope,
    double Curvature
);
