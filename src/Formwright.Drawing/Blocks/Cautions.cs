using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>The cautions that go with a machine or a material, in a box with a sign of their own.</summary>
public sealed record Cautions(IReadOnlyList<string> Texts, double WidthMm) : Block
{
    private const double PadMm = 4;
    private const double SignMm = 9;

    public TextStyle Style { get; init; } = TextStyle.Body;

    private Notes Inner =>
        new(Words.Of("cautions"), Texts, WidthMm - (2 * PadMm) - SignMm - 4) { Style = Style };

    public override Size Size => new(WidthMm, Math.Max(SignMm, Inner.Size.HeightMm) + (2 * PadMm));

    protected override void DrawAt(Ink ink, Point corner)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Size size = Size;
        ink.Stroke(
            Shape.Rectangle(
                Box.Of(corner.X, corner.Y - size.HeightMm, corner.X + size.WidthMm, corner.Y)
            ),
            LineStyle.Rule
        );
        Point top = corner + new Vector(PadMm + (SignMm / 2), -PadMm);
        Shape sign = Shape.Polyline(
            [top, top + new Vector(-SignMm / 2, -7.8), top + new Vector(SignMm / 2, -7.8)],
            closed: true
        );
        ink.Stroke(sign, LineStyle.Outline with { Layer = "caution" }, Level.Over);
        ink.Text(
            "!",
            top - new Vector(0, 6.8),
            TextStyle.Title with
            {
                HeightMm = 4,
            },
            Align.Centre
        );
        (Inner with { TopLeft = corner + new Vector(PadMm + SignMm + 4, -PadMm) }).Draw(
            ink,
            Placement.Identity
        );
    }
}
