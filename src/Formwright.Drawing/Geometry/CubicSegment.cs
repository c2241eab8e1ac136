using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A cubic Bézier piece of a path with its two control points.</summary>
public sealed record CubicSegment(Point Control1, Point Control2, Point End) : Segment(End);
