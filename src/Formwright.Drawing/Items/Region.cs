namespace Formwright.Drawing;

/// <summary>A region between closed loops (a loop inside a loop is a hole), with a flat fill, a hatch, an edge, or several of these.</summary>
public sealed record Region(IReadOnlyList<Shape> Loops) : Item
{
    public Region(Shape loop)
        : this([loop]) { }

    /// <summary>Flat fill; null for none.</summary>
    public Tone? Fill { get; init; }

    /// <summary>Direction of a hatch on the sheet, degrees; null for none. 45 is usual, 135 for the part that meets it.</summary>
    public double? HatchDegrees { get; init; }

    /// <summary>Distance of the hatch lines on the sheet.</summary>
    public double HatchSpacingMm { get; init; } = 2.5;

    /// <summary>Line around it; null for none.</summary>
    public LineStyle? Edge { get; init; }

    public override void Draw(Ink ink, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(ink);
        Shape[] loops = [.. Loops.Select(loop => loop.Placed(placement))];
        if (Fill is { } tone)
        {
            ink.Fill(loops, tone, tone == Tone.Wood ? "wood" : "fill");
        }

        if (HatchDegrees is { } degrees)
        {
            foreach (Shape line in Hatching.Lines(loops, degrees, HatchSpacingMm))
            {
                ink.Stroke(line, LineStyle.Hatch, Level.Ground);
            }
        }

        if (Edge is not null)
        {
            foreach (Shape loop in loops)
            {
                ink.Stroke(loop, Edge);
            }
        }
    }
}
