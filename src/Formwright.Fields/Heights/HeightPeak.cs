using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>The highest place of a field.</summary>
public readonly record struct HeightPeak(Point Place, double HeightMm);
