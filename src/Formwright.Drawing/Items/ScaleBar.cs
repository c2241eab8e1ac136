using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A bar of exactly 100 mm of paper: measure it before you trust a print.</summary>
/// <param name="From">Its left or lower end, sheet mm.</param>
/// <param name="IsUpright">Along the left edge instead of the lower one.</param>
public sealed record ScaleBar(Point From, bool IsUpright) : Item
{
    public const double LengthMm = 100;
    private const double EndTickMm = 1.75;
    private const double TickMm = 0.9;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Point from = placement.Apply(From);
        Vector along = IsUpright ? new(0, 1) : new(1, 0);
        Vector up = along.Left;
        ink.Stroke(Shape.Line(from, from + (LengthMm * along)), LineStyle.ScaleBar);
        for (int cm = 0; cm <= 10; cm++)
        {
            double tick = cm is 0 or 10 ? EndTickMm : TickMm;
            Point on = from + (10 * cm * along);
            ink.Stroke(
                Shape.Line(cm is 0 or 10 ? on - (tick * up) : on, on + (tick * up)),
                LineStyle.ScaleBar
            );
        }

        // Beyond the end of the lower bar; beside the upright one, whose end is near the centring mark.
        Point text = IsUpright
            ? from + (LengthMm / 2 * along) + ((EndTickMm + 1) * up)
            : from + ((LengthMm + 3) * along);
        ink.Text(
            Words.Of("bar"),
            text,
            TextStyle.Small,
            IsUpright ? Align.Centre : Align.Left,
            IsUpright ? Rise.Baseline : Rise.Middle,
            along.Angle
        );
    }
}
