using System.Xml.Linq;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Testing;

namespace Formwright.Writers.Tests;

public sealed class SvgTests
{
    private const string Project = "Formwright.Writers.Tests";

    [Fact]
    public void Sample_sheet_is_as_approved() =>
        Approved.Check(Project, "sample.svg", SvgWriter.Write(Sample.Sheet()));

    [Fact]
    public void Sample_part_is_as_approved() =>
        Approved.Check(Project, "part.svg", SvgWriter.Write(Sample.Part));

    [Fact]
    public void Sample_sheet_passes_the_audit() => Assert.Empty(SheetAudit.Of(Sample.Sheet()));

    [Fact]
    public void Same_sheet_gives_the_same_text() =>
        Assert.Equal(SvgWriter.Write(Sample.Sheet()), SvgWriter.Write(Sample.Sheet()));

    [Fact]
    public void Size_is_in_mm_and_there_are_no_scripts()
    {
        XElement root = XElement.Parse(SvgWriter.Write(Sample.Sheet()));
        Assert.Equal("420mm", root.Attribute("width")!.Value);
        Assert.Equal("297mm", root.Attribute("height")!.Value);
        Assert.Equal("0 0 420 297", root.Attribute("viewBox")!.Value);
        string[] kinds = [.. root.Descendants().Select(e => e.Name.LocalName).Distinct()];
        Assert.Subset(
            new HashSet<string> { "title", "defs", "path", "g", "use", "rect" },
            kinds.ToHashSet()
        );
        Assert.Contains(root.Descendants(), e => (string?)e.Attribute("data-key") == "length");
    }

    [Fact]
    public void Librsvg_draws_the_bars_100_mm_long()
    {
        string svg = Tools.TempFile(".svg");
        string png = Tools.TempFile(".png");
        File.WriteAllText(svg, SvgWriter.Write(Sample.Sheet()));
        // 254 dpi: 10 pixels per mm.
        Tools.Run("rsvg-convert", "-d", "254", "-p", "254", "-o", png, svg);
        Picture page = Picture.OfPng(File.ReadAllBytes(png), 10);
        Assert.Equal((4200, 2970), (page.Width, page.Height));
        List<double> across = page.Strokes(24, 13.1, 128, 14, acrossX: true);
        List<double> up = page.Strokes(14.5, 12, 15.4, 117, acrossX: false);
        Assert.Equal(100, across[^1] - across[0], 0.02);
        Assert.Equal(100, up[^1] - up[0], 0.02);
    }

    [Fact]
    public void Librsvg_and_poppler_see_the_same_sheet()
    {
        DrawnSheet sheet = Sample.Sheet();
        string svg = Tools.TempFile(".svg");
        string png = Tools.TempFile(".png");
        string pdf = Tools.TempFile(".pdf");
        File.WriteAllText(svg, SvgWriter.Write(sheet));
        using (FileStream stream = File.Create(pdf))
        {
            PdfWriter.Write(stream, [sheet]);
        }

        Tools.Run("rsvg-convert", "-d", "127", "-p", "127", "-o", png, svg);
        using MemoryStream own = new();
        PngWriter.Write(own, sheet, 5);
        Picture a = Picture.OfPng(File.ReadAllBytes(png), 5);
        Picture b = Picture.OfPdf(pdf, 1, 127);
        Picture c = Picture.OfPng(own.ToArray(), 5);
        // Poppler rounds the size of a page up.
        Assert.InRange(b.Width - a.Width, 0, 1);
        Assert.InRange(b.Height - a.Height, 0, 1);
        Assert.Equal((a.Width, a.Height), (c.Width, c.Height));
        // Each cell of 4 mm holds as much ink in all three; a text that is lost, moved or mirrored would show.
        for (int y = 0; y + 20 <= a.Height; y += 20)
        {
            for (int x = 0; x + 20 <= a.Width; x += 20)
            {
                double inkA = Ink(a, x, y);
                Assert.InRange(Ink(b, x, y) - inkA, -0.1, 0.1);
                Assert.InRange(Ink(c, x, y) - inkA, -0.1, 0.1);
            }
        }

        static double Ink(Picture picture, int x, int y)
        {
            double sum = 0;
            for (int k = 0; k < 400; k++)
            {
                sum += picture.Dark(x + (k % 20), y + (k / 20));
            }

            return sum / 400;
        }
    }

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.SemiBold)]
    public void Every_letter_is_whole_in_every_writer(Weight weight)
    {
        const string letters =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
            + "ÁÉÍÓÚÜÑáéíóúüñ¿¡½¼¾²³°±×·Ø–…«»“”.,;:()%/+-=<>!?&";
        TextStyle style = new("text", 10, weight);
        Sheet sheet = new(Sample.Title, Paper.A3);
        Point Cell(int i) => new(30 + (20 * (i % 12)), 390 - (20 * (i / 12)));
        DrawnSheet drawn = sheet
            .Add(letters.Select((c, i) => new Label($"{c}", Cell(i)) { Style = style }))
            .Draw();
        string svg = Tools.TempFile(".svg");
        string png = Tools.TempFile(".png");
        string pdf = Tools.TempFile(".pdf");
        File.WriteAllText(svg, SvgWriter.Write(drawn));
        using (FileStream stream = File.Create(pdf))
        {
            PdfWriter.Write(stream, [drawn]);
        }

        Tools.Run("rsvg-convert", "-d", "127", "-p", "127", "-o", png, svg);
        Picture a = Picture.OfPng(File.ReadAllBytes(png), 5);
        Picture b = Picture.OfPdf(pdf, 1, 127);
        for (int i = 0; i < letters.Length; i++)
        {
            double inkA = Ink(a, Cell(i));
            double inkB = Ink(b, Cell(i));
            Assert.True(inkA > 0.5, $"no {letters[i]} in SVG");
            Assert.True(
                Math.Abs(inkA - inkB) < 0.05 * inkA,
                $"{letters[i]}: {inkA:0.00} mm² in SVG, {inkB:0.00} mm² in PDF"
            );
        }

        static double Ink(Picture picture, Point at)
        {
            double sum = 0;
            int x0 = (int)(at.X * 5) - 5;
            int y0 = (int)((420 - at.Y) * 5) - 70;
            for (int k = 0; k < 90 * 90; k++)
            {
                sum += picture.Dark(x0 + (k % 90), y0 + (k / 90));
            }

            return sum / 25;
        }
    }

    [Fact]
    public void Inline_svg_keeps_text_and_has_no_ids()
    {
        string text = SvgWriter.Write(Sample.Sheet(), SvgOptions.Inline);
        Assert.DoesNotContain("<?xml", text, StringComparison.Ordinal);
        XElement root = XElement.Parse(text);
        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Attribute("id") is not null);
        Assert.Contains(root.Descendants(), e => e.Value == "cedro, 2 ½");
        Assert.Contains("currentColor", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Titles_cannot_break_the_markup()
    {
        Sheet sheet = new(Sample.Title with { Title = "<script>&\"'" }, Paper.A4);
        foreach (SvgOptions options in new[] { SvgOptions.File, SvgOptions.Inline })
        {
            XElement root = XElement.Parse(SvgWriter.Write(sheet.Draw(), options));
            Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName == "script");
        }
    }

    [Fact]
    public void Part_is_drawn_true_by_librsvg()
    {
        string svg = Tools.TempFile(".svg");
        string png = Tools.TempFile(".png");
        File.WriteAllText(svg, SvgWriter.Write(Sample.Part));
        Tools.Run("rsvg-convert", "-d", "508", "-p", "508", "-b", "white", "-o", png, svg);
        Picture page = Picture.OfPng(File.ReadAllBytes(png), 20);
        Box box = Sample.Part.Bounds().Grown(5);
        Assert.Equal(box.WidthMm * 20, page.Width, 1.01);
        // Along y_part = -15: the left edge at x = 0 and the right edge, on the arc about (75, 5) through (100, -20).
        double y = -15 - box.BottomMm;
        List<double> edges = page.Strokes(
            -box.LeftMm - 2,
            y,
            -box.LeftMm + 2,
            y + 0.1,
            acrossX: true
        );
        Assert.Equal(0 - box.LeftMm, Assert.Single(edges), 0.02);
        double arc = 75 + Math.Sqrt((2 * 25 * 25) - (20 * 20));
        edges = page.Strokes(
            arc - box.LeftMm - 2,
            y - 0.05,
            arc - box.LeftMm + 2,
            y + 0.05,
            acrossX: true
        );
        Assert.Equal(arc - box.LeftMm, Assert.Single(edges), 0.03);
    }
}
