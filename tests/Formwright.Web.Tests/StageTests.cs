using System.Globalization;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Web.Components.Board;

namespace Formwright.Web.Tests;

public sealed class StageTests
{
    [Fact]
    public void EveryKeyOfTheFileHasAStageAndAValue()
    {
        DesignReading heron = DesignText.Parse(DesignModels.TextOf("heron"), "heron");
        string[] homeless =
        [
            .. DesignText
                .Keys()
                .Select(spec => spec.Path)
                .Where(path =>
                    Stage.All.Count(stage => stage.Groups.Contains(path.Split('.', '[')[0])) != 1
                ),
        ];
        string[] unknown =
        [
            .. DesignText
                .Keys()
                .Select(spec => spec.Path)
                .Where(path => !path.Contains('[') && !heron.Values.ContainsKey(path)),
        ];
        Assert.Empty(homeless);
        Assert.Empty(unknown);
        Assert.Equal(45.0, heron.Values["climate.shop_humidity"]);
        Assert.Equal("fan-seven", heron.Values["bracing.layout"]);
        Assert.Equal(88.0, heron.Values["harmonic_bars[0].at"]);
        Assert.Null(heron.Values["outline.waist.radius"]);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void EveryWordOfTheFileIsSaidAsAMakerSaysIt(string language)
    {
        CultureInfo before = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
            string[] unsaid =
            [
                .. DesignText
                    .Keys()
                    .Where(spec => spec.Kind == KeyKind.Choice)
                    .SelectMany(spec => spec.Choices)
                    .Where(choice => !KeyInput.IsSaid(choice)),
            ];
            Assert.Empty(unsaid);
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void EveryFigureThatFollowsSaysHowItIsMeasured()
    {
        string[] keys = [.. WebWords.Of.Keys(CultureInfo.InvariantCulture)];
        string[] Named(string head) =>
            [
                .. keys.Where(key => key.StartsWith(head, StringComparison.Ordinal))
                    .Select(key => key[head.Length..])
                    .Order(),
            ];
        Assert.Equal(Named("figure."), Named("how.").Where(key => key != "title"));
    }
}
