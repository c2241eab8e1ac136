using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A text at a point.</summary>
public sealed record Label(string Text, Point At) : Item
{
    public TextStyle Style { get; init; } = TextStyle.Body;

    public Align Align { get; init; }

    public Rise Rise { get; init; }

    /// <summary>Direction on the sheet, degrees, left positive.</summary>
    public double Degrees { get; init; }

    /// <summary>Shift on the sheet.</summary>
    public Vector ShiftMm { get; init; }

    /// <summary>Clears the lines under it.</summary>
    public bool Clear { get; init; }

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ink.Text(
            LetteredLengths.OfLabel(Text),
            placement.Apply(At) + ShiftMm,
            Style,
            Align,
            Rise,
            Degrees * Math.PI / 180,
            Clear
        );
    }
}
