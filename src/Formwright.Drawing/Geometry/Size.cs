namespace Formwright.Drawing;

/// <summary>Width and height in mm.</summary>
public readonly record struct Size(double WidthMm, double HeightMm);
