using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>The distance of two points, along the line between them; <paramref name="OffsetMm"/> to the left of A→B on the sheet.</summary>
public sealed record AlignedDimension(Point A, Point B, double OffsetMm) : Item
{
    public string? Text { get; init; }

    public int Decimals { get; init; } = 1;

    public TextStyle Style { get; init; } = TextStyle.Figure;

    public double Share { get; init; } = 0.5;

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Point a = placement.Apply(A);
        Point b = placement.Apply(B);
        double length = a.DistanceTo(b);
        string text = Text is { } said
            ? LetteredLengths.OfDimension(said)
            : LetteredLengths.Figure(A.DistanceTo(B), Decimals);
        if (length < 1e-6)
        {
            ink.Flaw(SheetFlawKind.EmptyDimension, text, a);
            return;
        }

        Vector shift = OffsetMm / length * (b - a).Left;
        DimensionLine.Witness(ink, a, a + shift);
        DimensionLine.Witness(ink, b, b + shift);
        DimensionLine.Draw(ink, a + shift, b + shift, text, Style, Share);
    }
}
