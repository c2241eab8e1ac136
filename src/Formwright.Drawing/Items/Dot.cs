using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A filled dot; its size is in sheet mm.</summary>
public sealed record Dot(Point At, double DiameterMm = 1.2) : Item
{
    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ink.Fill([Shape.Circle(placement.Apply(At), DiameterMm / 2)], Tone.Ink, "dot", Level.Over);
    }
}
