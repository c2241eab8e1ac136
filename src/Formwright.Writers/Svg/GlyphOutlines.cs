using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Formwright.Drawing;
using SkiaSharp;

namespace Formwright.Writers;

/// <summary>Letters as SVG path data in font units, y downwards.</summary>
internal static class GlyphOutlines
{
    /// <summary>Units per em of the paths: the font's own, so that every coordinate is whole.</summary>
    public const int Em = 1000;

    private static readonly ConcurrentDictionary<(Weight, char), string> Paths = new();

    /// <summary>Path data of a character; empty for a space.</summary>
    public static string Of(Weight weight, char c) => Paths.GetOrAdd((weight, c), Make);

    private static string Make((Weight Weight, char Character) key)
    {
        using SKFont font = Skia.Font(key.Weight, Em);
        using SKPath? path = font.GetGlyphPath(font.GetGlyph(key.Character));
        if (path is null || path.IsEmpty)
        {
            return "";
        }

        StringBuilder data = new();
        using SKPath.RawIterator iterator = path.CreateRawIterator();
        SKPoint[] points = new SKPoint[4];
        for (
            SKPathVerb verb = iterator.Next(points);
            verb != SKPathVerb.Done;
            verb = iterator.Next(points)
        )
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    Add('M', 0, 0);
                    break;
                case SKPathVerb.Line:
                    Add('L', 1, 1);
                    break;
                case SKPathVerb.Quad:
                    Add('Q', 1, 2);
                    break;
                case SKPathVerb.Cubic:
                    Add('C', 1, 3);
                    break;
                case SKPathVerb.Close:
                    data.Append('Z');
                    break;
                default:
                    throw new InvalidOperationException($"{verb} in a glyph.");
            }
        }

        return data.ToString();

        void Add(char command, int first, int last)
        {
            data.Append(command);
            for (int i = first; i <= last; i++)
            {
                data.Append(
                    CultureInfo.InvariantCulture,
                    $"{(i > first ? " " : "")}{points[i].X:0.##} {points[i].Y:0.##}"
                );
            }
        }
    }
}
