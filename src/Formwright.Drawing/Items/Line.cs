using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A line along a shape.</summary>
public sealed record Line(Shape Shape, LineStyle Style) : Item
{
    /// <summary>A straight line.</summary>
    public Line(Point from, Point to, LineStyle style)
        : this(Shape.Line(from, to), style) { }

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ink.Stroke(Shape.Placed(placement), Style);
    }
}
