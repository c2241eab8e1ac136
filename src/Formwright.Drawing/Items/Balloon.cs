using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A number in a ring that ties a place on the drawing to a row of a table or a note.</summary>
/// <param name="Number">What stands in it, one or two characters.</param>
/// <param name="Target">The place.</param>
/// <param name="ToMm">From the place to the middle of the ring, on the sheet.</param>
public sealed record Balloon(string Number, Point Target, Vector ToMm) : Item
{
    public const double RadiusMm = 3.6;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Point target = placement.Apply(Target);
        Point middle = target + ToMm;
        double reach = ToMm.Length;
        if (reach > RadiusMm)
        {
            ink.Stroke(Shape.Line(target, middle - (RadiusMm / reach * ToMm)), LineStyle.Leader);
            ink.Fill([Shape.Circle(target, 0.6)], Tone.Ink, "balloon", Level.Line);
        }

        Shape ring = Shape.Circle(middle, RadiusMm);
        ink.Fill([ring], Tone.Paper, "clear", Level.Clear);
        ink.Stroke(ring, LineStyle.Balloon, Level.Over);
        ink.Text(
            Number,
            middle,
            TextStyle.Balloon with
            {
                HeightMm = Number.Length > 2 ? 2.5 : 3.5,
            },
            Align.Centre,
            Rise.Middle
        );
    }
}
