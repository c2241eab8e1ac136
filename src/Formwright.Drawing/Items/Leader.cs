using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A text at the end of a thin line to the thing that it speaks of.</summary>
/// <param name="Target">What it points at.</param>
/// <param name="ToMm">From the target to the bend, on the sheet; the text stands beyond it, on the same side.</param>
/// <param name="Text">One or more lines.</param>
public sealed record Leader(Point Target, Vector ToMm, string Text) : Item
{
    private const double LandingMm = 3;

    public LeaderEnd End { get; init; }

    public TextStyle Style { get; init; } = TextStyle.Body;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        DrawTo(ink, placement.Apply(Target), ToMm, LetteredLengths.OfLabel(Text), Style, End);
    }

    internal static void DrawTo(
        Ink ink,
        Point target,
        Vector to,
        string text,
        TextStyle style,
        LeaderEnd end
    )
    {
        Point bend = target + to;
        double side = to.X < 0 ? -1 : 1;
        Point landing = bend + new Vector(side * LandingMm, 0);
        ink.Stroke(Shape.Polyline([target, bend, landing]), LineStyle.Leader);
        if (end == LeaderEnd.Arrow && to.Length > 0)
        {
            DimensionLine.Arrow(ink, target, -to);
        }
        else if (end == LeaderEnd.Dot)
        {
            ink.Fill([Shape.Circle(target, 0.6)], Tone.Ink, "leader", Level.Line);
        }

        string[] lines = text.Split('\n');
        Point at = landing + new Vector(side * 1.2, 0);
        for (int i = 0; i < lines.Length; i++)
        {
            ink.Text(
                lines[i],
                at - new Vector(0, i * style.LineMm),
                style,
                side < 0 ? Align.Right : Align.Left,
                Rise.Middle,
                clear: true
            );
        }
    }
}
