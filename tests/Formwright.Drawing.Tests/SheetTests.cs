using System.Globalization;
using System.Reflection;
using Formwright.Curves;
using Formwright.Words;

namespace Formwright.Drawing.Tests;

public sealed class SheetTests
{
    private static readonly TitleBlock Title = new("Mould half", "FW-0003-01");

    public static TheoryData<string> Papers => ["A0", "A1", "A2", "A3", "A4"];

    private static Paper Named(string name) =>
        new[] { Paper.A0, Paper.A1, Paper.A2, Paper.A3, Paper.A4 }.Single(p => p.Name == name);

    [Theory]
    [MemberData(nameof(Papers))]
    public void Frame_and_title_block_are_after_ISO_5457(string name)
    {
        // ISO 5457:1999: border 20 mm left, 10 mm elsewhere; title block at most 180 mm wide, lower right corner.
        foreach (Paper paper in new[] { Named(name), Named(name).Turned() })
        {
            Sheet sheet = new(Title, paper);
            Assert.Equal(Box.Of(20, 10, paper.WidthMm - 10, paper.HeightMm - 10), sheet.Frame);
            Assert.Equal(180, sheet.TitleBlockBox.WidthMm, 1e-9);
            Assert.Equal(sheet.Frame.BottomRight, sheet.TitleBlockBox.BottomRight);
            Assert.True(sheet.Frame.Holds(sheet.Area));
            Assert.False(sheet.Area.Overlaps(sheet.TitleBlockBox));
            Assert.Empty(SheetAudit.Of(sheet));
            StrokeMark frame = sheet
                .Draw()
                .Marks.OfType<StrokeMark>()
                .First(m => m.Style == LineStyle.Frame && m.Shape.Closed);
            Assert.Equal(0.7, frame.Style.WidthMm);
            Assert.Equal(sheet.Frame, frame.Shape.Bounds());
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Both_bars_are_100_mm_on_every_sheet(string name)
    {
        StrokeMark[] bars =
        [
            .. new Sheet(Title, Named(name))
                .Draw()
                .Marks.OfType<StrokeMark>()
                .Where(m =>
                    m.Style == LineStyle.ScaleBar && m.Shape.Start.DistanceTo(m.Shape.End) > 50
                ),
        ];
        Assert.Equal(2, bars.Length);
        Assert.All(bars, b => Assert.Equal(100, b.Shape.Start.DistanceTo(b.Shape.End), 1e-9));
        Assert.Contains(bars, b => b.Shape.Start.X == b.Shape.End.X);
        Assert.Contains(bars, b => b.Shape.Start.Y == b.Shape.End.Y);
    }

    [Fact]
    public void Title_block_holds_the_fields_of_ISO_7200()
    {
        TitleBlock title = new("Mould half", "FW-3")
        {
            Owner = "Tern Lane",
            Date = "2025-05-01",
            SheetNumber = 4,
            SheetCount = 9,
            Approval = "P. Gull",
            Creator = "A. Núñez",
            DocumentType = "template",
            Revision = "C",
        };
        foreach (Paper paper in new[] { Paper.A4, Paper.A3 })
        {
            View view = new([new Dot(new(0, 0))]) { Scale = 0.5, At = new(100, 150) };
            string[] texts =
            [
                .. new Sheet(title, paper)
                    .Add(view)
                    .Draw()
                    .Marks.OfType<TextMark>()
                    .Select(t => t.Text),
            ];
            Assert.Subset(
                texts.ToHashSet(),
                new HashSet<string>
                {
                    "Mould half",
                    "FW-3",
                    "Tern Lane",
                    "2025-05-01",
                    "4 of 9",
                    "P. Gull",
                    "A. Núñez",
                    "template",
                    "C",
                    "1:2",
                }
            );
        }
    }

    [Fact]
    public void Long_title_shrinks_and_then_is_cut_with_a_flaw()
    {
        TitleBlock title = Title with { Title = new string('m', 25) };
        TextMark text = new Sheet(title, Paper.A4)
            .Draw()
            .Marks.OfType<TextMark>()
            .Single(t => t.Text.StartsWith("mmm", StringComparison.Ordinal));
        Assert.Equal(2.5, text.Style.HeightMm);
        Sheet cut = new(Title with { Title = new string('m', 200) }, Paper.A4);
        Assert.Contains(SheetAudit.Of(cut), f => f.Kind == SheetFlawKind.TextCut);
    }

    [Theory]
    [InlineData(160, 200, "A4", 210)]
    [InlineData(240, 150, "A4", 297)]
    [InlineData(370, 220, "A3", 420)]
    [InlineData(500, 480, "A1", 594)]
    public void Paper_is_the_smallest_that_holds_the_drawing(
        double width,
        double height,
        string name,
        double paperWidth
    )
    {
        Paper paper = Paper.Holding(new Size(width, height));
        Assert.Equal((name, paperWidth), (paper.Name, paper.WidthMm));
    }

    [Fact]
    public void Drawing_larger_than_A0_gets_paper_of_its_own()
    {
        Paper paper = Paper.Holding(new Size(1400, 900));
        Box area = new Sheet(Title, paper).Area;
        Assert.True(area.WidthMm >= 1400 && area.HeightMm >= 900);
        Assert.Throws<ArgumentOutOfRangeException>(() => Paper.Of(double.NaN, 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => Paper.Of(300, 6000));
    }

    [Fact]
    public void Every_text_has_its_Spanish()
    {
        Wording words = Wording.Of(typeof(Sheet).Assembly);
        Assert.Equal(
            words.Keys(CultureInfo.InvariantCulture).Order(),
            words.Keys(new CultureInfo("es")).Order()
        );
    }

    [Fact]
    public void Widths_of_lines_are_those_of_ISO_128()
    {
        // ISO 128: 0.13 0.18 0.25 0.35 0.5 0.7 mm (sources.md, section 6).
        double[] widths = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7];
        LineStyle[] styles =
        [
            .. typeof(LineStyle)
                .GetProperties(BindingFlags.Public | BindingFlags.Static)
                .Select(p => (LineStyle)p.GetValue(null)!),
        ];
        Assert.True(styles.Length > 10);
        Assert.All(styles, s => Assert.Contains(s.WidthMm, widths));
        Assert.Equal(styles.Length, styles.Select(s => s.Layer).Distinct().Count());
        // Wide to narrow 2:1.
        Assert.Equal(2, LineStyle.Outline.WidthMm / LineStyle.Hidden.WidthMm);
    }

    [Fact]
    public void Calibration_page_has_bars_of_150_and_200_mm()
    {
        Sheet sheet = CalibrationPage.Sheet(Title);
        Assert.Empty(SheetAudit.Of(sheet));
        double[] lengths =
        [
            .. sheet
                .Draw()
                .Marks.OfType<StrokeMark>()
                .Where(m => m.Layer == "calibration-bar")
                .Select(m => m.Shape.Start.DistanceTo(m.Shape.End))
                .Where(l => l > 50)
                .Order(),
        ];
        Assert.Equal([150, 200], lengths);
        PrintScale scale = PrintScale.FromMeasured(149.4, 200.6);
        Assert.Equal((0.996, 1.003), (scale.X, scale.Y));
    }
}
