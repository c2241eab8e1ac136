using Formwright.Curves;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Templates;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>The bridge stands in one place, whichever sheet or template the maker takes it from.</summary>
public sealed class BridgePlaceTests
{
    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void The_window_of_the_template_puts_the_saddle_where_the_strings_want_it(string model)
    {
        Study study = Study.Of(
            DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!,
            builds: 0
        );
        Part template = study.Tooling!.Templates.Single(part =>
            part.Id == BenchTemplates.PlacementId
        );
        Box window = template
            .Insides.Select(inside => Shape.Of(inside).Bounds())
            .Single(box => box.Min.Y < 0 && box.Max.Y > 0);

        // The slot is cut so far behind the bridge's front edge; there the middle of the saddle must come, between the outer strings'.
        double[] saddles = [.. study.Action!.StringRows.Select(row => row.SaddleMm)];
        Assert.True(saddles.Average() > study.Design.Identity.ScaleMm + 1);
        Assert.Equal(
            (saddles[0] + saddles[^1]) / 2,
            window.Min.X + study.Body!.Bridge.SlotMiddleMm,
            1e-9
        );

        // What is printed: from the heel on the template, from the nut on the bridge's own sheet.
        double front = Math.Round(window.Min.X, 1);
        Assert.Contains(
            Figures.Mm(window.Min.X - study.Design.Identity.JoinMm, 1),
            Texts(study, BenchTemplates.PlacementId)
        );
        Assert.Contains($"{Figures.Fixed(front, 1)} mm", Texts(study, "bridge"));
    }

    private static string[] Texts(Study study, string sheet) =>
        [.. study.Sheet(sheet)!.Sheet.Draw().Marks.OfType<TextMark>().Select(mark => mark.Text)];
}
