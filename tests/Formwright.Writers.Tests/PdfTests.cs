using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Testing;

namespace Formwright.Writers.Tests;

public sealed partial class PdfTests
{
    private static string Write(params DrawnSheet[] sheets) => WriteScaled(null, sheets);

    private static string WriteScaled(PrintScale? scale, params DrawnSheet[] sheets)
    {
        string file = Tools.TempFile(".pdf");
        using FileStream stream = File.Create(file);
        PdfWriter.Write(stream, sheets, scale);
        return file;
    }

    /// <summary>Sizes of pages in points as poppler reads them.</summary>
    internal static List<(double Width, double Height)> PageSizes(string pdf)
    {
        // The media box has more digits than the line 'size'.
        string text = Tools.Run("pdfinfo", "-box", "-f", "1", "-l", "999", pdf);
        return
        [
            .. MediaBox()
                .Matches(text)
                .Select(m =>
                    (
                        double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture),
                        double.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture)
                    )
                ),
        ];
    }

    [Fact]
    public void Pages_have_the_sizes_of_ISO_216_and_of_a_roll()
    {
        // ISO 216 (sources.md, section 6); the unit of PDF is 1/72 in.
        (Paper Paper, double Width, double Height)[] papers =
        [
            (Paper.A4, 210, 297),
            (Paper.A3.Turned(), 420, 297),
            (Paper.A2, 420, 594),
            (Paper.A1, 594, 841),
            (Paper.A0.Turned(), 1189, 841),
            (Paper.Of(914.4, 1321.7), 914.4, 1321.7),
        ];
        string pdf = Write([.. papers.Select(p => new Sheet(Sample.Title, p.Paper).Draw())]);
        List<(double Width, double Height)> sizes = PageSizes(pdf);
        Assert.Equal(papers.Length, sizes.Count);
        for (int i = 0; i < papers.Length; i++)
        {
            // pdfinfo prints two decimals of a point.
            Assert.Equal(papers[i].Width * 72 / 25.4, sizes[i].Width, 0.0051);
            Assert.Equal(papers[i].Height * 72 / 25.4, sizes[i].Height, 0.0051);
        }
    }

    [Fact]
    public void Media_box_is_exact_to_a_thousandth_of_a_point()
    {
        string pdf = Write(new Sheet(Sample.Title, Paper.A4).Draw());
        Match box = RawMediaBox().Match(File.ReadAllText(pdf, System.Text.Encoding.Latin1));
        Assert.True(box.Success);
        // sources.md, section 6: A4 = 595.2755906 × 841.8897638.
        Assert.Equal(
            595.2755906,
            double.Parse(box.Groups[1].Value, CultureInfo.InvariantCulture),
            0.001
        );
        Assert.Equal(
            841.8897638,
            double.Parse(box.Groups[2].Value, CultureInfo.InvariantCulture),
            0.001
        );
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(0.99, 1.012)]
    public void Bars_measure_100_mm_on_the_print(double printerX, double printerY)
    {
        DrawnSheet sheet = Sample.Sheet();
        string pdf = WriteScaled(new PrintScale(printerX, printerY), sheet);
        (double width, double height) = Assert.Single(PageSizes(pdf));
        Assert.Equal(420 * 72 / 25.4, width, 0.0051);
        Assert.Equal(297 * 72 / 25.4, height, 0.0051);
        // Ends of the bars as the sheet is laid out, then as the correction moves them about the middle of the page.
        double X(double mm) => 210 + ((mm - 210) / printerX);
        double Y(double mm) => 148.5 + ((mm - 148.5) / printerY);
        // Below the lower bar only its end strokes are found; so right of the upright one.
        List<double> across = Picture.StrokesOfPdf(
            pdf,
            1,
            297,
            Box.Of(X(24), Y(13.1), X(128), Y(14)),
            acrossX: true
        );
        List<double> up = Picture.StrokesOfPdf(
            pdf,
            1,
            297,
            Box.Of(X(14.5), Y(12), X(15.4), Y(117)),
            acrossX: false
        );
        Assert.Equal(2, across.Count);
        Assert.Equal(2, up.Count);
        // What this printer makes of it: the bar is to be 100.00 ± 0.05 mm.
        Assert.Equal(100, (across[1] - across[0]) * printerX, 0.05);
        Assert.Equal(100, (up[1] - up[0]) * printerY, 0.05);
    }

    [Fact]
    public void Text_is_text_in_the_face_that_ships()
    {
        string pdf = Write(Sample.Sheet());
        string text = Tools.Run("pdftotext", "-layout", pdf, "-");
        foreach (
            string expected in new[]
            {
                "Head of the Plover",
                "FW-0001-02",
                "A. Núñez",
                "señorita",
                "cedro, 2 ½",
                "Ø 6.4 through",
                "50 ± 0.2",
                "heights 10 times true",
                "treble",
                "2 of 3",
            }
        )
        {
            Assert.Contains(expected, text, StringComparison.Ordinal);
        }

        string fonts = Tools.Run("pdffonts", pdf);
        Assert.Contains("BarlowSemiCondensed", fonts.Replace(" ", ""), StringComparison.Ordinal);
        Assert.DoesNotContain(" no  no", fonts, StringComparison.Ordinal);
    }

    [Fact]
    public void Same_sheet_gives_the_same_pixels()
    {
        Picture one = Picture.OfPdf(Write(Sample.Sheet()), 1, 100);
        Picture other = Picture.OfPdf(Write(Sample.Sheet()), 1, 100);
        Assert.True(one.Pixels.SequenceEqual(other.Pixels));
        Assert.Contains((byte)0, one.Pixels.ToArray());
    }

    [Fact]
    public void Lines_have_their_width_in_mm()
    {
        // The left frame line, 0.7 mm wide (ISO 5457), as darkness integrated across it.
        Picture page = Picture.OfPdf(Write(new Sheet(Sample.Title, Paper.A4).Draw()), 1, 300);
        int y = page.Height / 3;
        double dark = 0;
        for (int x = (int)(18 * page.PxPerMm); x < 22 * page.PxPerMm; x++)
        {
            dark += page.Dark(x, y);
        }

        Assert.Equal(0.7, dark / page.PxPerMm, 0.06);
    }

    [Fact]
    public void Caller_mistakes_throw()
    {
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(new MemoryStream(), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PrintScale(1.11, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PrintScale(1, double.NaN));
    }

    [GeneratedRegex(@"MediaBox:\s+0\.00\s+0\.00\s+([\d.]+)\s+([\d.]+)")]
    private static partial Regex MediaBox();

    [GeneratedRegex(@"/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]")]
    private static partial Regex RawMediaBox();
}
