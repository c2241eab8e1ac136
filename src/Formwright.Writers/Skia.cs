using System.Collections.Concurrent;
using Formwright.Drawing;
using SkiaSharp;

namespace Formwright.Writers;

/// <summary>The face that ships, as SkiaSharp wants it; made once.</summary>
internal static class Skia
{
    private static readonly ConcurrentDictionary<Weight, SKTypeface> Typefaces = new();

    public static SKTypeface Typeface(Weight weight) =>
        Typefaces.GetOrAdd(
            weight,
            static w =>
            {
                using SKData data = SKData.CreateCopy(Drawing.Typeface.Of(w).File.Span);
                return SKTypeface.FromData(data);
            }
        );

    /// <summary>A font set by its outlines alone: no hinting, no rounding of advances.</summary>
    public static SKFont Font(Weight weight, float em) =>
        new(Typeface(weight), em)
        {
            Hinting = SKFontHinting.None,
            LinearMetrics = true,
            Subpixel = true,
            Edging = SKFontEdging.Antialias,
        };
}
