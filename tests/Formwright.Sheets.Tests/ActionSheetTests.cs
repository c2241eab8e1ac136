using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Sheets.Action;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class ActionSheetTests
{
    public static TheoryData<string, string, string> Cases =>
        new()
        {
            { "heron", "en", "" },
            { "heron", "es", "" },
            { "dunlin", "es", "" },
            { "plover", "en", "" },
            // The flat school, a join at 13, and an instrument for the left hand.
            { "heron", "en", "neck.ramp=0" },
            { "heron", "es", "instrument.join_fret=13" },
            { "heron", "en", "instrument.hand=\"left\"" },
            { "heron", "en", "saddle.compensation=\"nut-and-saddle\"" },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_sheet_of_neck_and_action_has_a_flaw(string model, string language, string change)
    {
        Flaws.NoneIn(language, () => Sheets(model, change));
    }

    [Fact]
    public void The_fret_rule_is_true_to_scale()
    {
        NamedSheet rule = Sheets("heron", "").Single(named => named.Id == "fret-rule");
        Assert.True(rule.IsTiled);

        // Level lines as wide as the fingerboard at their fret: 52 at the nut, 62 at the join, frets between.
        double[] levels =
        [
            .. rule
                .Sheet.Draw()
                .Marks.OfType<StrokeMark>()
                .Where(mark => mark.Style.Layer is "detail" or "outline")
                .Select(mark => mark.Shape)
                .Where(shape =>
                    shape.Segments.Count == 1
                    && Math.Abs(shape.Start.Y - shape.End.Y) < 1e-9
                    && Math.Abs(shape.Start.X - shape.End.X) is > 50 and < 70
                )
                .Select(shape => shape.Start.Y)
                .OrderDescending(),
        ];
        Assert.Equal(19, levels.Length);

        // 650 mm: fret 12 stands 325 from the nut, fret 1 36.4816968, fret 19 433.088524 (computed).
        Assert.Equal(325 - 36.4816968, levels[0] - levels[11], 1e-6);
        Assert.Equal(433.088524 - 36.4816968, levels[0] - levels[18], 1e-6);
    }

    private static IReadOnlyList<NamedSheet> Sheets(string model, string change)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", $"{model}.toml"));
        if (change.Length > 0)
        {
            string[] parts = change.Split('=');
            text = DesignEdit.Set(text, parts[0], parts[1]);
        }

        Guitar guitar = Guitar.Build(DesignText.Parse(text, model).Design!).Guitar!;
        return ActionSheets.Of(guitar, NeckAndAction.Of(guitar, 2000));
    }
}
