using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A straight piece of a path.</summary>
public sealed record LineSegment(Point End) : Segment(End);
