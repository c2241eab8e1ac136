namespace Formwright.Drawing;

/// <summary>How a text is lettered. <paramref name="HeightMm"/> is the height of a capital, after ISO 3098.</summary>
public sealed record TextStyle(string Layer, double HeightMm, Weight Weight, Tone Tone = Tone.Ink)
{
    private static readonly double[] Heights = [1.8, 2.5, 3.5, 5, 7, 10];

    /// <summary>Names of fields: 1.8 mm.</summary>
    public static TextStyle Small { get; } = new("small-text", 1.8, Weight.Regular);

    /// <summary>Notes, rows of a table: 2.5 mm.</summary>
    public static TextStyle Body { get; } = new("text", 2.5, Weight.Regular);

    /// <summary>What stands out in a note or a row: 2.5 mm.</summary>
    public static TextStyle Strong { get; } = new("text", 2.5, Weight.SemiBold);

    /// <summary>Figures of dimensions: 3.5 mm.</summary>
    public static TextStyle Figure { get; } = new("figure", 3.5, Weight.Medium);

    /// <summary>Lesser figures, stations: 2.5 mm.</summary>
    public static TextStyle SmallFigure { get; } = new("figure", 2.5, Weight.Medium);

    public static TextStyle Balloon { get; } = new("balloon", 3.5, Weight.Medium);

    /// <summary>Heads of views, tables and notes: 3.5 mm.</summary>
    public static TextStyle Heading { get; } = new("heading", 3.5, Weight.SemiBold);

    /// <summary>The title of a sheet: 5 mm.</summary>
    public static TextStyle Title { get; } = new("title", 5, Weight.SemiBold);

    /// <summary>The next height of ISO 3098 (1.8, 2.5, 3.5, 5, 7, 10 mm), in the same weight.</summary>
    public TextStyle Larger =>
        this with
        {
            HeightMm = Heights.FirstOrDefault(h => h > HeightMm, Heights[^1]),
        };

    /// <summary>The style of a heading over a text of this style.</summary>
    internal TextStyle ItsHeading => Heading with { HeightMm = Larger.HeightMm };

    /// <summary>Width of a text in this style, in mm.</summary>
    public double WidthMm(string text) => Typeface.Of(Weight).WidthMm(text, HeightMm);

    /// <summary>Distance of baselines.</summary>
    public double LineMm => 1.75 * HeightMm;
}
