namespace Formwright.Drawing;

/// <summary>How a line is drawn, chosen by what it means. Widths after ISO 128, wide to narrow 2:1.</summary>
/// <param name="Layer">Plain name: the group in SVG, and what a writer may show or hide.</param>
/// <param name="WidthMm">Width in sheet mm.</param>
/// <param name="Tone">Colour.</param>
/// <param name="Dash">Lengths of dash and gap in sheet mm in turn; empty for a full line.</param>
public sealed record LineStyle(string Layer, double WidthMm, Tone Tone, IReadOnlyList<double> Dash)
{
    /// <summary>Visible edges, the outline of a part.</summary>
    public static LineStyle Outline { get; } = new("outline", 0.5, Tone.Ink, []);

    /// <summary>Edges seen from the side, frets, details inside a part.</summary>
    public static LineStyle Detail { get; } = new("detail", 0.25, Tone.Ink, []);

    /// <summary>Edges behind something.</summary>
    public static LineStyle Hidden { get; } = new("hidden", 0.25, Tone.Ink, [3, 1]);

    /// <summary>Chain-dotted centreline and axes.</summary>
    public static LineStyle Centreline { get; } =
        new("centreline", 0.25, Tone.Ink, [9, 1.2, 0.6, 1.2]);

    /// <summary>The datum: chain-dotted with two dots.</summary>
    public static LineStyle Datum { get; } =
        new("datum", 0.25, Tone.Ink, [9, 1.2, 0.6, 1.2, 0.6, 1.2]);

    /// <summary>From the part to a dimension line.</summary>
    public static LineStyle Witness { get; } = new("witness", 0.18, Tone.Ink, []);

    public static LineStyle Dimension { get; } = new("dimension", 0.18, Tone.Ink, []);

    public static LineStyle Leader { get; } = new("leader", 0.18, Tone.Ink, []);

    public static LineStyle Balloon { get; } = new("balloon", 0.25, Tone.Ink, []);

    public static LineStyle Hatch { get; } = new("hatch", 0.13, Tone.SecondInk, []);

    /// <summary>Lines of equal height or depth.</summary>
    public static LineStyle Contour { get; } = new("contour", 0.18, Tone.SecondInk, []);

    /// <summary>A cut through the part.</summary>
    public static LineStyle Cut { get; } = new("cut", 0.5, Tone.Ink, []);

    /// <summary>The edge of a recess that does not go through.</summary>
    public static LineStyle Pocket { get; } = new("pocket", 0.35, Tone.Ink, [4, 1]);

    /// <summary>Holes.</summary>
    public static LineStyle Drill { get; } = new("drill", 0.35, Tone.Ink, []);

    /// <summary>Lines that are scribed or engraved.</summary>
    public static LineStyle Engrave { get; } = new("engrave", 0.18, Tone.Ink, []);

    /// <summary>The curves of a plot.</summary>
    public static LineStyle Curve { get; } = new("curve", 0.35, Tone.Ink, []);

    /// <summary>The lesser curves of a plot, curvature hairs.</summary>
    public static LineStyle Hair { get; } = new("hair", 0.13, Tone.SecondInk, []);

    /// <summary>Guides behind a plot.</summary>
    public static LineStyle Guide { get; } = new("guide", 0.13, Tone.SecondInk, [0.6, 1.2]);

    /// <summary>Frame of the sheet, after ISO 5457.</summary>
    public static LineStyle Frame { get; } = new("frame", 0.7, Tone.Ink, []);

    /// <summary>Where two tiled pages meet.</summary>
    public static LineStyle Seam { get; } = new("seam", 0.13, Tone.Ink, [2, 1.5]);

    /// <summary>Crosses on which tiled pages are laid.</summary>
    public static LineStyle MatchMark { get; } = new("match-mark", 0.18, Tone.Ink, []);

    /// <summary>The 100 mm bars.</summary>
    public static LineStyle ScaleBar { get; } = new("scale-bar", 0.25, Tone.Ink, []);

    /// <summary>Rules under the head of a table, boxes of the title block.</summary>
    public static LineStyle Rule { get; } = new("rule", 0.35, Tone.Ink, []);

    /// <summary>Rules between the rows of a table.</summary>
    public static LineStyle FineRule { get; } = new("fine-rule", 0.13, Tone.SecondInk, []);
}
