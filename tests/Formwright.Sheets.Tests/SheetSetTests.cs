using Formwright.Curves;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Jigs.Parts;
using Formwright.Sheets.Cutting;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class SheetSetTests
{
    public static TheoryData<string, string> ModelsAndLanguages =>
        new()
        {
            { "heron", "en" },
            { "heron", "es" },
            { "dunlin", "en" },
            { "dunlin", "es" },
            { "plover", "en" },
            { "plover", "es" },
        };

    [Theory]
    [MemberData(nameof(ModelsAndLanguages))]
    public void No_sheet_has_a_flaw(string model, string language)
    {
        NamedSheet[] sheets = Flaws.NoneIn(language, () => Sheets(model));
        Assert.Equal(sheets.Length, sheets.Select(sheet => sheet.Id).Distinct().Count());
    }

    [Theory]
    [InlineData("cork-overlay", "en")]
    [InlineData("plywood-overlay", "es")]
    public void No_sheet_of_an_overlaid_board_has_a_flaw(string method, string language)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        text = DesignEdit.Set(text, "workboard.relief", $"\"{method}\"");
        InstrumentDesign design = DesignText.Parse(text, "heron.toml").Design!;
        NamedSheet[] sheets = Flaws.NoneIn(
            language,
            () => Sheets(Instrument.Guitar.Build(design).Guitar!)
        );
        string[] own = ["workboard", "overlay", "support-blocks", "gaps"];
        Assert.Equal(own.Length, sheets.Count(named => own.Contains(named.Id)));
    }

    [Fact]
    public void A_cut_file_is_the_board_turned_a_quarter_and_never_mirrored()
    {
        // An asymmetric part: one hole on the bass side, towards the nut.
        ArcPath edge = new(
            [
                new(new Point(0, -40), 0),
                new(new Point(200, -40), 0),
                new(new Point(200, 60), 0),
                new(new Point(0, 60), 0),
            ],
            true,
            0,
            0
        );
        Part part = new(
            "workboard",
            "material.plywood",
            30,
            1,
            edge,
            [],
            [],
            [new(HoleKind.Dowel, new Point(20, 50), 8)],
            []
        );
        CutPart cut = CutParts.Of(part);
        // Neck up and face up, bass is on the right: x 20 from the nut is 20 down the page, y_b 50 is 50 to the right.
        Assert.Equal(new Point(50, -20), cut.Holes[0].Centre);
        Assert.Equal(60, cut.Contours[0].Shape.Bounds().Max.X, 1e-9);
        Assert.Equal(-40, cut.Contours[0].Shape.Bounds().Min.X, 1e-9);
    }

    [Fact]
    public void A_layer_that_is_cut_from_below_is_shown_from_below()
    {
        Guitar guitar = Guitar("heron");
        Part bass = Jigs.Tooling.Of(guitar).Parts.Single(part => part.Id == "mould-bottom-bass");
        CutPart cut = CutParts.Of(bass);
        Assert.Contains(cut.Contours, contour => contour.Operation == CutOperation.Pocket);
        Assert.All(cut.Holes, hole => Assert.True(hole.Centre.X < 0));
    }

    private static IReadOnlyList<NamedSheet> Sheets(string model) => Sheets(Guitar(model));

    private static IReadOnlyList<NamedSheet> Sheets(Guitar guitar)
    {
        NeckAndAction action = NeckAndAction.Of(guitar, builds: 0);
        return SheetSet.Of(guitar, action, BodyPlan.Of(guitar), Jigs.Tooling.Of(guitar));
    }

    private static Guitar Guitar(string model) =>
        Instrument
            .Guitar.Build(DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!)
            .Guitar!;
}
