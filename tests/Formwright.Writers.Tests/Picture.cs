using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Testing;
using SkiaSharp;

namespace Formwright.Writers.Tests;

/// <summary>A grey picture with its resolution; y downwards. Darkness is 0 white to 1 black.</summary>
internal sealed class Picture
{
    private readonly byte[] pixels;

    private Picture(int width, int height, byte[] pixels, double pxPerMm)
    {
        Width = width;
        Height = height;
        this.pixels = pixels;
        PxPerMm = pxPerMm;
    }

    public int Width { get; }

    public int Height { get; }

    public double PxPerMm { get; }

    public ReadOnlySpan<byte> Pixels => pixels;

    /// <summary>A page of a PDF as poppler renders it.</summary>
    public static Picture OfPdf(string pdf, int page, int dpi) => Render(pdf, page, dpi, []);

    /// <summary>
    /// Middles (mm) of the strokes that cross a strip of a PDF page, as poppler renders it at 1200 dpi; the strip is
    /// given in mm from the lower left corner. See <see cref="Strokes"/>.
    /// </summary>
    public static List<double> StrokesOfPdf(
        string pdf,
        int page,
        double pageHeightMm,
        Box strip,
        bool acrossX
    )
    {
        const int dpi = 1200;
        const double px = dpi / 25.4;
        int x = (int)Math.Floor(strip.LeftMm * px);
        int y = (int)Math.Floor((pageHeightMm - strip.TopMm) * px);
        int width = (int)Math.Ceiling(strip.WidthMm * px);
        int height = (int)Math.Ceiling(strip.HeightMm * px);
        Picture crop = Render(
            pdf,
            page,
            dpi,
            ["-x", $"{x}", "-y", $"{y}", "-W", $"{width}", "-H", $"{height}"]
        );
        List<double> strokes = crop.Strokes(
            0,
            0,
            crop.Width / crop.PxPerMm,
            crop.Height / crop.PxPerMm,
            acrossX
        );
        double from = acrossX ? x / px : pageHeightMm - ((y + crop.Height) / px);
        return [.. strokes.Select(s => s + from)];
    }

    private static Picture Render(string pdf, int page, int dpi, string[] crop)
    {
        string root = Tools.TempFile("");
        Tools.Run(
            "pdftoppm",
            [
                "-r",
                $"{dpi}",
                "-f",
                $"{page}",
                "-l",
                $"{page}",
                "-gray",
                "-singlefile",
                .. crop,
                pdf,
                root,
            ]
        );
        byte[] file = File.ReadAllBytes(root + ".pgm");
        File.Delete(root + ".pgm");
        // P5, width, height, 255, each ended by white space.
        int at = 3;
        int[] head = new int[3];
        for (int i = 0; i < 3; i++)
        {
            while (file[at] is >= (byte)'0' and <= (byte)'9')
            {
                head[i] = (head[i] * 10) + file[at++] - '0';
            }

            at++;
        }

        return new Picture(head[0], head[1], file[at..], dpi / 25.4);
    }

    public static Picture OfPng(byte[] png, double pxPerMm)
    {
        using SKBitmap bitmap = SKBitmap.Decode(png);
        using SKBitmap grey = new(
            new SKImageInfo(bitmap.Width, bitmap.Height, SKColorType.Gray8, SKAlphaType.Opaque)
        );
        Assert.True(bitmap.CopyTo(grey, SKColorType.Gray8));
        byte[] pixels = new byte[grey.Width * grey.Height];
        for (int y = 0; y < grey.Height; y++)
        {
            grey.GetPixelSpan()
                .Slice(y * grey.RowBytes, grey.Width)
                .CopyTo(pixels.AsSpan(y * grey.Width));
        }

        return new Picture(grey.Width, grey.Height, pixels, pxPerMm);
    }

    public double Dark(int x, int y) => 1 - (pixels[(y * Width) + x] / 255.0);

    /// <summary>
    /// Middles (mm) of the strokes that cross a strip of the page, found as the centres of darkness of runs of dark
    /// columns (or rows). The strip is given in mm from the lower left corner.
    /// </summary>
    public List<double> Strokes(double left, double bottom, double right, double top, bool acrossX)
    {
        int x0 = (int)Math.Round(left * PxPerMm);
        int x1 = (int)Math.Round(right * PxPerMm);
        int y0 = Height - (int)Math.Round(top * PxPerMm);
        int y1 = Height - (int)Math.Round(bottom * PxPerMm);
        int count = acrossX ? x1 - x0 : y1 - y0;
        double[] dark = new double[count];
        for (int y = y0; y < y1; y++)
        {
            for (int x = x0; x < x1; x++)
            {
                dark[acrossX ? x - x0 : y1 - 1 - y] += Dark(x, y);
            }
        }

        List<double> middles = [];
        double least = 0.05 * dark.Max();
        for (int i = 0; i < count; i++)
        {
            double sum = 0;
            double moment = 0;
            for (; i < count && dark[i] > least; i++)
            {
                sum += dark[i];
                moment += dark[i] * (i + 0.5);
            }

            if (sum > 0)
            {
                middles.Add((acrossX ? left : bottom) + (moment / sum / PxPerMm));
            }
        }

        return middles;
    }
}
