using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A heading and wrapped paragraphs.</summary>
/// <param name="Heading">Heading; empty for none.</param>
/// <param name="Paragraphs">The texts.</param>
/// <param name="WidthMm">Width to wrap at.</param>
public sealed record Notes(string Heading, IReadOnlyList<string> Paragraphs, double WidthMm) : Block
{
    private const double IndentMm = 6;

    /// <summary>Whether the paragraphs are numbered from 1.</summary>
    public bool Numbered { get; init; }

    public TextStyle Style { get; init; } = TextStyle.Body;

    private double HeadMm => Heading.Length == 0 ? 0 : Style.ItsHeading.HeightMm + 3.5;

    private double BetweenMm => 0.6 * Style.HeightMm;

    private double TextWidthMm => WidthMm - (Numbered ? IndentMm : 0);

    public override Size Size
    {
        get
        {
            int lines = Paragraphs.Sum(p => Wrapping.Lines(p, Style, TextWidthMm).Count);
            double text =
                lines == 0
                    ? 0
                    : ((lines - 1) * Style.LineMm)
                        + ((Paragraphs.Count - 1) * BetweenMm)
                        + (1.3 * Style.HeightMm);
            return new Size(WidthMm, HeadMm + text);
        }
    }

    protected override void DrawAt(Ink ink, Point corner)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ink.Text(Heading, corner, Style.ItsHeading, rise: Rise.Top);
        Point at = corner - new Vector(0, HeadMm + Style.HeightMm);
        for (int i = 0; i < Paragraphs.Count; i++)
        {
            if (Numbered)
            {
                ink.Text($"{i + 1}", at, Style with { Weight = Weight.SemiBold });
            }

            Vector indent = new(Numbered ? IndentMm : 0, 0);
            foreach (string line in Wrapping.Lines(Paragraphs[i], Style, TextWidthMm))
            {
                ink.Text(line, at + indent, Style);
                at -= new Vector(0, Style.LineMm);
            }

            at -= new Vector(0, BetweenMm);
        }
    }
}
