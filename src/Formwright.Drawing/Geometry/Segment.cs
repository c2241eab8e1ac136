using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>One piece of a <see cref="Shape"/>; it starts where the piece before it ends.</summary>
public abstract record Segment(Point End);
