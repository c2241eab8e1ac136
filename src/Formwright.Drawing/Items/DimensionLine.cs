using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Draws a dimension line with its figure between two points of the sheet.</summary>
internal static class DimensionLine
{
    public const double ArrowMm = 3;
    private const double ArrowHalfMm = 0.42;
    private const double WitnessGapMm = 1;
    private const double WitnessOverMm = 1.5;

    /// <summary>A slender filled arrowhead with its point at <paramref name="tip"/>.</summary>
    public static void Arrow(Ink ink, Point tip, Vector direction)
    {
        Vector d = direction * (1 / direction.Length);
        Point tail = tip - (ArrowMm * d);
        ink.Fill(
            [
                Shape.Polyline(
                    [tip, tail + (ArrowHalfMm * d.Left), tail - (ArrowHalfMm * d.Left)],
                    closed: true
                ),
            ],
            Tone.Ink,
            "dimension",
            Level.Line
        );
    }

    public static void Witness(Ink ink, Point from, Point to)
    {
        Vector step = to - from;
        double length = step.Length;
        if (length > WitnessGapMm + 0.5)
        {
            Vector d = step * (1 / length);
            ink.Stroke(
                Shape.Line(from + (WitnessGapMm * d), to + (WitnessOverMm * d)),
                LineStyle.Witness
            );
        }
    }

    /// <param name="ink">Where to draw.</param>
    /// <param name="p">One end of the dimension line.</param>
    /// <param name="q">The other.</param>
    /// <param name="text">The figure.</param>
    /// <param name="style">Its lettering.</param>
    /// <param name="share">Where along the line the figure stands, 0 to 1.</param>
    public static void Draw(Ink ink, Point p, Point q, string text, TextStyle style, double share)
    {
        Vector run = q - p;
        // Read from below or from the right.
        double angle = run.Angle;
        if (angle > (Math.PI / 2) + 1e-9 || angle <= (-Math.PI / 2) + 1e-9)
        {
            (p, q) = (q, p);
            run = q - p;
            angle = run.Angle;
            share = 1 - share;
        }

        double length = run.Length;
        if (length < 1e-6)
        {
            ink.Flaw(SheetFlawKind.EmptyDimension, text, p);
            return;
        }

        Vector d = run * (1 / length);
        double gap = style.WidthMm(text) + (0.8 * style.HeightMm);
        if (length >= gap + (2 * ArrowMm) + 2)
        {
            double room = ArrowMm + 1 + (gap / 2);
            double at = Math.Clamp(share * length, room, length - room);
            ink.Stroke(Shape.Line(p, p + ((at - (gap / 2)) * d)), LineStyle.Dimension);
            ink.Stroke(Shape.Line(p + ((at + (gap / 2)) * d), q), LineStyle.Dimension);
            Arrow(ink, p, -d);
            Arrow(ink, q, d);
            ink.Text(text, p + (at * d), style, Align.Centre, Rise.Middle, angle, clear: true);
            return;
        }

        bool outside = length < (2 * ArrowMm) + 1;
        double tail = outside ? ArrowMm + 2 : 2;
        ink.Stroke(Shape.Line(p, q), LineStyle.Dimension);
        if (outside)
        {
            ink.Stroke(Shape.Line(p - (tail * d), p), LineStyle.Dimension);
            Arrow(ink, p, d);
            Arrow(ink, q, -d);
        }
        else
        {
            Arrow(ink, p, -d);
            Arrow(ink, q, d);
        }

        // Too short for its figure: it stands beyond the end that the share is nearer to.
        ink.Stroke(
            share < 0.5 ? Shape.Line(p - (tail * d), p) : Shape.Line(q, q + (tail * d)),
            LineStyle.Dimension
        );
        double clearance = tail + (0.3 * style.HeightMm);
        ink.Text(
            text,
            share < 0.5 ? p - (clearance * d) : q + (clearance * d),
            style,
            share < 0.5 ? Align.Right : Align.Left,
            Rise.Middle,
            angle,
            clear: true
        );
        if (outside && share < 0.5)
        {
            ink.Stroke(Shape.Line(q, q + (tail * d)), LineStyle.Dimension);
        }
    }

    /// <summary>Model mm per sheet mm along a direction of the sheet.</summary>
    public static double ModelPerSheet(Placement placement, Vector direction) =>
        placement.TurnBack(direction).Length / direction.Length;
}
