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
using static System.FormattableString;

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

    // What is written alike in both languages is a name, a material's number or a word that they share; anything else was forgotten.
    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Every_word_on_a_sheet_is_translated(string model)
    {
        string[] english = [.. Words("en")];
        string[] alike =
        [
            .. english
                .Intersect(Words("es"))
                .Except(["cents", "material", "E, GPa", "Tern Lane workshop"]),
        ];
        Assert.True(english.Length > 300);
        Assert.True(alike.Length == 0, string.Join(Environment.NewLine, alike));

        IEnumerable<string> Words(string language) =>
            Flaws.Made(
                language,
                () =>
                    (string[])
                        [
                            .. Flaws
                                .Texts(Sheets(model))
                                .Where(text => text.Count(char.IsLetter) >= 4)
                                .Distinct(),
                        ]
            );
    }

    // Where a machine, dust, heat or tension comes in, the sheet that the maker has at hand says so.
    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Every_sheet_of_work_that_can_hurt_has_its_cautions(string model)
    {
        string[] hurting =
        [
            "heights",
            "nut-and-saddle",
            "fret-rule",
            "board",
            "thickness",
            "rosette",
            "neck",
            "bending",
            "bridge",
            "dome-gauges",
            "workboard",
            "overlay",
            "support-blocks",
            "spots",
            "relief-gauges",
            "mould",
        ];
        NamedSheet[] sheets =
        [
            .. Flaws.NoneIn("en", () => Sheets(model)).Where(named => hurting.Contains(named.Id)),
        ];
        Assert.InRange(sheets.Length, 13, 15);
        Assert.All(
            sheets,
            named =>
                Assert.Contains(
                    named.Sheet.Draw().Marks.OfType<TextMark>(),
                    mark => mark.Text == "Take care"
                )
        );
    }

    // Stations that lie close to each other or to a bout have their figures moved apart.
    [Theory]
    [InlineData(-12)]
    [InlineData(-8)]
    [InlineData(-4)]
    [InlineData(-1)]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    public void Bars_close_to_bout_and_waist_leave_every_figure_of_the_outline_readable(double off)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "dunlin.toml"))
            .Replace("at = 83", Invariant($"at = {99 + off}"), StringComparison.Ordinal)
            .Replace("at = 196", Invariant($"at = {180 - off}"), StringComparison.Ordinal);
        Guitar guitar = Instrument.Guitar.Build(DesignText.Parse(text, "d").Design!).Guitar!;
        string[] ids = ["outline", "soundboard", "template-placement", "workboard", "overlay"];
        Flaws.NoneIn("en", () => Sheets(guitar).Where(named => ids.Contains(named.Id)));
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
