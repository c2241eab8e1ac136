using Formwright.Drawing;
using SkiaSharp;

namespace Formwright.Writers;

/// <summary>Writes a sheet as a grey PNG, for a look without printing.</summary>
public static class PngWriter
{
    private const double LargestPx = 20_000;

    /// <param name="stream">Where to; stays open.</param>
    /// <param name="drawn">The sheet, laid out.</param>
    /// <param name="pxPerMm">Pixels per mm: 4 is 102 dpi.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not positive, or more than 20 000 pixels along a side.</exception>
    public static void Write(Stream stream, DrawnSheet drawn, double pxPerMm = 4)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(drawn);
        Paper paper = drawn.Sheet.Paper;
        double longest = Math.Max(paper.WidthMm, paper.HeightMm) * pxPerMm;
        if (!(longest >= 1 && longest <= LargestPx))
        {
            throw new ArgumentOutOfRangeException(nameof(pxPerMm));
        }

        SKImageInfo info = new(
            (int)Math.Round(paper.WidthMm * pxPerMm),
            (int)Math.Round(paper.HeightMm * pxPerMm),
            SKColorType.Gray8,
            SKAlphaType.Opaque
        );
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        using SkiaPen pen = new(surface.Canvas, paper.HeightMm, pxPerMm);
        pen.Draw(drawn.Marks);
        using SKPixmap pixels = surface.PeekPixels();
        using SKData data =
            pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.None, zLibLevel: 2))
            ?? throw new InvalidOperationException("The picture could not be encoded.");
        data.SaveTo(stream);
    }
}
