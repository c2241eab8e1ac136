using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A ruled schedule. Texts wider than their column are wrapped.</summary>
/// <param name="Heading">Heading over it; empty for none.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Texts by row and column.</param>
public sealed record Table(
    string Heading,
    IReadOnlyList<Column> Columns,
    IReadOnlyList<IReadOnlyList<string>> Rows
) : Block
{
    private const double GapMm = 5;

    public TextStyle Style { get; init; } = TextStyle.Body;

    /// <summary>Whole width; null takes what the columns need. What is over goes to the first column.</summary>
    public double? WidthMm { get; init; }

    private double RowPadMm => 0.75 * Style.HeightMm;

    private TextStyle HeadStyle => Style with { Weight = Weight.Regular };

    private bool HasHeads => Columns.Any(c => c.Head.Length > 0);

    public override Size Size
    {
        get
        {
            double[] widths = Widths();
            double height = HeadingMm + HeadMm;
            foreach (IReadOnlyList<string> row in Rows)
            {
                height += RowMm(row, widths);
            }

            return new Size(widths.Sum() + (GapMm * (widths.Length - 1)), height);
        }
    }

    private double HeadingMm => Heading.Length == 0 ? 0 : Style.ItsHeading.HeightMm + 2.5;

    private double HeadMm => HasHeads ? Style.HeightMm + (2 * RowPadMm) : 0;

    protected override void DrawAt(Ink ink, Point corner)
    {
        ArgumentNullException.ThrowIfNull(ink);
        double[] widths = Widths();
        double right = corner.X + widths.Sum() + (GapMm * (widths.Length - 1));
        double y = corner.Y - HeadingMm;
        ink.Text(Heading, corner, Style.ItsHeading, rise: Rise.Top);
        Rule(LineStyle.Rule);
        if (HasHeads)
        {
            Letter([.. Columns.Select(c => c.Head)], HeadStyle, isHead: true);
            y -= HeadMm;
            Rule(LineStyle.Rule with { WidthMm = 0.18 });
        }

        foreach (IReadOnlyList<string> row in Rows)
        {
            Letter(row, Style, isHead: false);
            y -= RowMm(row, widths);
            Rule(LineStyle.FineRule);
        }

        void Rule(LineStyle style) =>
            ink.Stroke(Shape.Line(new(corner.X, y), new(right, y)), style);

        void Letter(IReadOnlyList<string> texts, TextStyle style, bool isHead)
        {
            double x = corner.X;
            for (int i = 0; i < Columns.Count; i++)
            {
                TextStyle own =
                    Columns[i].Strong && !isHead ? style with { Weight = Weight.SemiBold } : style;
                double at =
                    Columns[i].Align == Align.Left ? x
                    : Columns[i].Align == Align.Centre ? x + (widths[i] / 2)
                    : x + widths[i];
                double line = y - RowPadMm - Style.HeightMm;
                string text = i < texts.Count ? texts[i] : "";
                foreach (string part in isHead ? [text] : Wrapping.Lines(text, own, widths[i]))
                {
                    ink.Text(part, new(at, line), own, Columns[i].Align);
                    line -= Style.LineMm;
                }

                x += widths[i] + GapMm;
            }
        }
    }

    private double RowMm(IReadOnlyList<string> row, double[] widths)
    {
        int lines = 1;
        for (int i = 0; i < Columns.Count && i < row.Count; i++)
        {
            TextStyle own = Columns[i].Strong ? Style with { Weight = Weight.SemiBold } : Style;
            lines = Math.Max(lines, Wrapping.Lines(row[i], own, widths[i]).Count);
        }

        return Style.HeightMm + (2 * RowPadMm) + ((lines - 1) * Style.LineMm);
    }

    private double[] Widths()
    {
        double[] widths = new double[Columns.Count];
        for (int i = 0; i < widths.Length; i++)
        {
            Column column = Columns[i];
            TextStyle own = column.Strong ? Style with { Weight = Weight.SemiBold } : Style;
            // A hair wider than its longest text, so that this is never wrapped.
            widths[i] =
                column.WidthMm
                ?? Math.Max(
                    HeadStyle.WidthMm(column.Head),
                    Rows.Select(row => i < row.Count ? own.WidthMm(row[i]) : 0)
                        .DefaultIfEmpty()
                        .Max()
                ) + 1e-6;
        }

        double over = (WidthMm ?? 0) - widths.Sum() - (GapMm * (widths.Length - 1));
        if (over > 0)
        {
            widths[0] += over;
        }

        return widths;
    }
}
