using Formwright.Curves;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body;
using Formwright.Instrument.Plates;
using Formwright.Sheets.Body;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class BodySheetTests
{
    public static TheoryData<string, string, string> Cases =>
        new()
        {
            { "heron", "en", "" },
            { "heron", "es", "" },
            { "dunlin", "en", "" },
            { "dunlin", "es", "" },
            { "plover", "en", "" },
            { "plover", "es", "" },
            { "heron", "es", "[heel]\nmethod = \"dowels\"\n[bracing]\nlayout = \"fan-five\"" },
            {
                "dunlin",
                "en",
                "[bracing]\nlayout = \"skewed-seven\"\n[back]\nkind = \"sphere\"\nlong_radius = 4500"
            },
            {
                "plover",
                "es",
                "[bracing]\nlayout = \"lattice\"\nheight = 3\n[head]\njoint = \"one-piece\""
            },
            {
                "dunlin",
                "es",
                "[soundboard]\nthickness = 2.6\nedge_thickness = 1.5\n[ribs]\nlining = \"glue-blocks\"\n[load]\nbridge = \"stated\""
            },
            {
                "heron",
                "en",
                "[bridge]\npatch_thickness = 2\n[bracing]\nlayout = \"none\"\n[back]\nlong_radius = 0\ncross_radius = 0"
            },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_sheet_of_the_body_has_a_flaw(string model, string language, string more)
    {
        Flaws.NoneIn(language, () => Sheets(model, more));
    }

    [Fact]
    public void The_plate_has_its_pictures()
    {
        IReadOnlyList<NamedSheet> sheets = Sheets(
            "heron",
            "[soundboard]\nthickness = 2.6\nedge_thickness = 2.0\n"
        );
        NamedSheet modes = sheets.Single(named => named.Id == "modes");
        DrawnView[] views = [.. modes.Sheet.Draw().Views];
        Assert.Equal(20, views.Length);
        Assert.StartsWith("1 · ", views[0].Name, StringComparison.Ordinal);

        // Figures at the crosses run from the edge's to the middle's.
        string[] texts =
        [
            .. sheets
                .Single(named => named.Id == "thickness")
                .Sheet.Draw()
                .Marks.OfType<TextMark>()
                .Select(mark => mark.Text),
        ];
        Assert.Contains("2.60", texts);
        Assert.Contains("2.1", texts);
        Assert.Contains("2.5", texts);
        Assert.DoesNotContain("2.6", texts);
        Assert.True(texts.Count(text => text == "______") >= 25);
        Assert.Contains(sheets, named => named.Id == "plate");
    }

    // Measured on the sheet itself: the two ribs are as long as the plan says and each other's mirror image.
    [Fact]
    public void The_rib_pattern_is_true_to_scale_and_shows_each_rib_on_its_outer_face()
    {
        (Guitar guitar, BodyPlan body) = Plan("heron", "");
        NamedSheet ribs = BodySheets.Of(guitar, body).Single(named => named.Id == "ribs");
        Assert.True(ribs.IsTiled);
        Shape[] patterns =
        [
            .. ribs
                .Sheet.Draw()
                .Marks.OfType<StrokeMark>()
                .Where(mark => mark.Style.Layer == "outline" && mark.Shape.Closed)
                .Select(mark => mark.Shape)
                .Where(shape => shape.Segments.Count > 100),
        ];
        Assert.Equal(2, patterns.Length);
        Box upper = patterns.Select(shape => shape.Bounds()).MaxBy(box => box.Max.Y);
        Box lower = patterns.Select(shape => shape.Bounds()).MinBy(box => box.Max.Y);
        Assert.Equal(body.Ribs.LengthMm, upper.WidthMm, 1e-6);
        Assert.Equal(body.Ribs.MostHeightMm, upper.HeightMm, 1e-6);
        Assert.Equal(upper.WidthMm, lower.WidthMm, 1e-9);
        // Soundboard down and seen from outside, the treble rib (the upper view) runs heel to tail from left to right: along × up = outward is
        // x × (-z) = y. The tail is the higher end.
        Assert.True(
            RightEnd(patterns.MaxBy(shape => shape.Bounds().Max.Y)!)
                > LeftEnd(patterns.MaxBy(shape => shape.Bounds().Max.Y)!)
        );
        Assert.True(
            RightEnd(patterns.MinBy(shape => shape.Bounds().Max.Y)!)
                < LeftEnd(patterns.MinBy(shape => shape.Bounds().Max.Y)!)
        );

        static double LeftEnd(Shape shape) => Height(shape, shape.Bounds().Min.X);
        static double RightEnd(Shape shape) => Height(shape, shape.Bounds().Max.X);
        static double Height(Shape shape, double x)
        {
            double[] ends =
            [
                .. shape.Flatten(0.01).Where(at => Math.Abs(at.X - x) < 1e-6).Select(at => at.Y),
            ];
            return ends.Max() - ends.Min();
        }
    }

    // The bars on the full-size layout: H1 at its station, as long as between the ribs' inner faces.
    [Fact]
    public void The_brace_layout_is_true_to_scale()
    {
        (Guitar guitar, BodyPlan body) = Plan("heron", "");
        NamedSheet sheet = BodySheets.Of(guitar, body).Single(named => named.Id == "soundboard");
        Box[] boxes =
        [
            .. sheet
                .Sheet.Draw()
                .Marks.OfType<FillMark>()
                .SelectMany(mark => mark.Loops)
                .Select(shape => shape.Bounds()),
        ];
        double length = body.Soundboard.Braces[0].LengthMm;
        Assert.Contains(
            boxes,
            box => Math.Abs(box.WidthMm - length) < 1e-6 && Math.Abs(box.HeightMm - 6) < 1e-6
        );
    }

    [Fact]
    public void The_spectrum_of_a_tap_has_no_flaw()
    {
        Guitar guitar = Guitar("heron", "");
        TapSpectrum spectrum = TapSpectrum.Of(Tap(), 20, 400);
        NamedSheet sheet = TapSheet.Of(guitar, spectrum, "board-1.wav");
        Assert.Empty(SheetAudit.Of(sheet.Sheet));
        Assert.Contains(sheet.Sheet.Draw().Marks.OfType<TextMark>(), mark => mark.Text == "62.8");
    }

    private static Recording Tap()
    {
        float[] samples = new float[40000];
        for (int i = 1600; i < samples.Length; i++)
        {
            double t = (i - 1600) / 16000.0;
            samples[i] = (float)(
                (0.4 * Math.Exp(-2.6 * t) * Math.Cos(2 * Math.PI * 62.83 * t))
                + (0.2 * Math.Exp(-7 * t) * Math.Cos(2 * Math.PI * 118.4 * t))
            );
        }

        return new Recording(samples, 16000);
    }

    private static IReadOnlyList<NamedSheet> Sheets(string model, string more)
    {
        Guitar guitar = Guitar(model, more + "\n[plate]\nunknowns = 1000\n");
        SoundboardPlate plate = SoundboardPlate.Of(guitar);
        return
        [
            .. BodySheets.Of(
                guitar,
                BodyPlan.Of(guitar),
                NeckAndAction.Of(guitar, 0, plate),
                plate
            ),
        ];
    }

    private static (Guitar Guitar, BodyPlan Body) Plan(string model, string more)
    {
        Guitar guitar = Guitar(model, more);
        return (guitar, BodyPlan.Of(guitar));
    }

    private static Guitar Guitar(string model, string more)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", $"{model}.toml"));
        DesignReading reading = DesignText.Parse($"{text}\n{more}", model);
        Assert.True(reading.Succeeded, string.Join("\n", reading.Diagnostics));
        return Instrument.Guitar.Build(reading.Design).Guitar!;
    }
}
