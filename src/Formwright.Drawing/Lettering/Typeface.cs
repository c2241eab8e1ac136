using System.Collections.Concurrent;

namespace Formwright.Drawing;

/// <summary>
/// One weight of Barlow Semi Condensed (SIL Open Font License 1.1), with its widths. Its figures are the tabular
/// ones, and it holds no kerning or ligatures, so that every writer sets a text to the same width.
/// </summary>
public sealed class Typeface
{
    private static readonly ConcurrentDictionary<Weight, Typeface> Loaded = new();
    private readonly TrueType font;

    private Typeface(Weight weight)
    {
        Weight = weight;
        using Stream stream =
            typeof(Typeface).Assembly.GetManifestResourceStream($"BarlowSemiCondensed-{weight}.ttf")
            ?? throw new InvalidOperationException($"The face {weight} is not embedded.");
        byte[] file = new byte[stream.Length];
        stream.ReadExactly(file);
        font = TrueType.WithTabularFigures(file);
    }

    public Weight Weight { get; }

    /// <summary>The face of a weight; read once.</summary>
    public static Typeface Of(Weight weight) => Loaded.GetOrAdd(weight, w => new Typeface(w));

    /// <summary>The font file that writers use: as shipped, but with tabular figures and without kerning.</summary>
    public ReadOnlyMemory<byte> File => font.File;

    /// <summary>Height of a capital over the em (0.7 for this face).</summary>
    public double CapitalOverEm => font.CapitalHeight / (double)font.UnitsPerEm;

    /// <summary>Size of the em for capitals of a height.</summary>
    public double EmMm(double heightMm) => heightMm / CapitalOverEm;

    /// <summary>Width of a text whose capitals are <paramref name="heightMm"/> high.</summary>
    public double WidthMm(string text, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(text);
        int units = 0;
        foreach (char c in text)
        {
            units += font.Advance(c);
        }

        return units * EmMm(heightMm) / font.UnitsPerEm;
    }

    /// <summary>Whether the face can set a character.</summary>
    public bool Has(char c) => font.Glyph(c) != 0;
}
