using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// The distance of two points along the sheet (above, below) or up the sheet (left, right), in model mm. With
/// <see cref="OffsetMm"/> 0 the line stands on the points themselves, without witness lines where it can.
/// </summary>
public sealed record LinearDimension(Point A, Point B, Side Side, double OffsetMm) : Item
{
    /// <summary>What it says instead of the measured figure.</summary>
    public string? Text { get; init; }

    /// <summary>Added after the figure, as in "± 0.2".</summary>
    public string? After { get; init; }

    public int Decimals { get; init; } = 1;

    public TextStyle Style { get; init; } = TextStyle.Figure;

    /// <summary>Where along the line the figure stands: 0 left or below, 1 right or above.</summary>
    public double Share { get; init; } = 0.5;

    /// <summary>The figure in model mm, whatever the scale of the view or of its heights.</summary>
    public double ValueMm(Placement placement)
    {
        Point a = placement.Apply(A);
        Point b = placement.Apply(B);
        return Side is Side.Above or Side.Below
            ? Math.Abs(b.X - a.X) * DimensionLine.ModelPerSheet(placement, new(1, 0))
            : Math.Abs(b.Y - a.Y) * DimensionLine.ModelPerSheet(placement, new(0, 1));
    }

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Point a = placement.Apply(A);
        Point b = placement.Apply(B);
        Point p;
        Point q;
        if (Side is Side.Above or Side.Below)
        {
            double y =
                Side == Side.Above ? Math.Max(a.Y, b.Y) + OffsetMm : Math.Min(a.Y, b.Y) - OffsetMm;
            (p, q) = (new Point(a.X, y), new Point(b.X, y));
            if (p.X > q.X)
            {
                (p, q, a, b) = (q, p, b, a);
            }
        }
        else
        {
            double x =
                Side == Side.Right ? Math.Max(a.X, b.X) + OffsetMm : Math.Min(a.X, b.X) - OffsetMm;
            (p, q) = (new Point(x, a.Y), new Point(x, b.Y));
            if (p.Y > q.Y)
            {
                (p, q, a, b) = (q, p, b, a);
            }
        }

        DimensionLine.Witness(ink, a, p);
        DimensionLine.Witness(ink, b, q);
        string text = Text is { } said
            ? LetteredLengths.OfDimension(said)
            : LetteredLengths.Figure(ValueMm(placement), Decimals);
        string after = After is null ? "" : $" {LetteredLengths.OfDimension(After)}";
        DimensionLine.Draw(ink, p, q, text + after, Style, Share);
    }
}
