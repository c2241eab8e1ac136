using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A text to engrave: left end of its baseline, height of a capital.</summary>
public sealed record CutText(string Text, Point At, double HeightMm = 5, double Degrees = 0);
