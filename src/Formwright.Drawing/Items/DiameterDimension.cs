using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A diameter, by a leader to the edge of the circle.</summary>
/// <param name="Centre">Centre, model mm.</param>
/// <param name="DiameterMm">Diameter, model mm.</param>
/// <param name="ToMm">From the edge to the bend of the leader, on the sheet.</param>
public sealed record DiameterDimension(Point Centre, double DiameterMm, Vector ToMm) : Item
{
    /// <summary>How many alike; more than one is written before the figure.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Written after the figure: the depth, what goes into it.</summary>
    public string? After { get; init; }

    public TextStyle Style { get; init; } = TextStyle.Body;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        string figure = $"Ø {LetteredLengths.Figure(DiameterMm, 2)}";
        string text =
            (Count > 1 ? $"{Count} × {figure}" : figure)
            + (After is null ? "" : $" {LetteredLengths.OfLabel(After)}");
        Point centre = placement.Apply(Centre);
        if (!(DiameterMm > 0))
        {
            ink.Flaw(SheetFlawKind.EmptyDimension, text, centre);
            return;
        }

        Vector out1 = ToMm.Length > 0 ? ToMm * (1 / ToMm.Length) : new Vector(1, 0);
        Point edge = centre + (DiameterMm / 2 * placement.Scale * out1);
        Leader.DrawTo(ink, edge, ToMm, text, Style, LeaderEnd.Arrow);
    }
}
