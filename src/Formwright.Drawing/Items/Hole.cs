using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A drilled hole with its centre cross.</summary>
public sealed record Hole(Point Centre, double DiameterMm) : Item
{
    public LineStyle Style { get; init; } = LineStyle.Drill;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ink.Stroke(Shape.Circle(Centre, DiameterMm / 2).Placed(placement), Style);
        double arm = (DiameterMm / 2 * placement.Scale) + 1.5;
        new Cross(Centre, arm) { Style = LineStyle.Witness }.Draw(ink, placement);
    }
}
