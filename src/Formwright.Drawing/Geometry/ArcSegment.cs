using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// A circular piece of a path. <paramref name="Bulge"/> is tan(θ/4) of the angle θ that it turns through, positive
/// when it turns to the left (counter-clockwise with y upwards), as in DXF; 1 is a half circle. |θ| is below 2π.
/// </summary>
public sealed record ArcSegment(Point End, double Bulge) : Segment(End);
