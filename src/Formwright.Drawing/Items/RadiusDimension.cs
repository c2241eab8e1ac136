using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A radius, with its arrow on the arc. The line runs towards the outside of the arc, or into it.</summary>
/// <param name="Centre">Centre of the arc, model mm.</param>
/// <param name="RadiusMm">Radius, model mm.</param>
/// <param name="AngleRad">Where on the arc, as seen from the centre, in the model.</param>
/// <param name="LegMm">Length of the line on the sheet: positive outwards, negative towards the centre.</param>
public sealed record RadiusDimension(Point Centre, double RadiusMm, double AngleRad, double LegMm)
    : Item
{
    public string? Text { get; init; }

    public TextStyle Style { get; init; } = TextStyle.Figure;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Vector outwards = Vector.At(AngleRad);
        Point target = placement.Apply(Centre + (RadiusMm * outwards));
        Vector on = placement.Turn(outwards);
        string text = Text is { } said
            ? LetteredLengths.OfDimension(said)
            : $"R {LetteredLengths.Figure(RadiusMm)}";
        if (!(RadiusMm > 0))
        {
            ink.Flaw(SheetFlawKind.EmptyDimension, text, target);
            return;
        }

        Leader.DrawTo(ink, target, LegMm / on.Length * on, text, Style, LeaderEnd.Arrow);
    }
}
