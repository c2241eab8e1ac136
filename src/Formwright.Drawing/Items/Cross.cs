using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A cross at a point; <paramref name="ArmMm"/> is half its size on the sheet.</summary>
public sealed record Cross(Point At, double ArmMm = 2) : Item
{
    public LineStyle Style { get; init; } = LineStyle.Detail;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Point at = placement.Apply(At);
        ink.Stroke(Shape.Line(at - new Vector(ArmMm, 0), at + new Vector(ArmMm, 0)), Style);
        ink.Stroke(Shape.Line(at - new Vector(0, ArmMm), at + new Vector(0, ArmMm)), Style);
    }
}
