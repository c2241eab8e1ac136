using System.Net;
using System.Text.RegularExpressions;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Packs;
using Formwright.Web.Components.Board;
using Formwright.Web.Reading;

namespace Formwright.Web.Tests;

public sealed partial class InchLettersTests
{
    private static readonly Size Room = new(200, 180);

    // A sheet's further views are alike: one for each mode.
    private const int MostOfASheet = 4;

    private static readonly Lazy<Study> Heron = new(() =>
        Study.Of(
            DesignText.Parse(DesignModels.TextOf("heron") + "\n[jig]\nmake = true\n", "").Design!
        )
    );

    [Theory]
    [InlineData("ramp: 1.50 mm down at the nut", "ramp: 0.0591 in down at the nut")]
    [InlineData("across at the bar, 531.0 from the nut", "across at the bar, 20.906″ from the nut")]
    [InlineData("Sheet 1: plywood 30 mm, 2500 × 1250", "Sheet 1: plywood 1.18 in, 98.43″ × 49.21″")]
    [InlineData("bend out, tightest R 69", "bend out, tightest R 2.72″")]
    [InlineData("0.4", ".016″")]
    [InlineData("0.5", ".020″")]
    [InlineData("F7", "F7")]
    [InlineData("12", "12")]
    [InlineData("15.5°", "15.5°")]
    public void ATextIsInTheReadersUnit(string text, string inInches)
    {
        Assert.Equal(inInches, InchLetters.Of(text, Reader.Parse("en.in.point.light")));
        Assert.Equal(text, InchLetters.Of(text, Reader.Parse("en.mm.point.light")));
    }

    [Theory]
    [InlineData("52", "2.05″")]
    [InlineData("Ø 84", "Ø 3.31″")]
    [InlineData("± 0.2", "± 0.008″")]
    public void TheTextOfADimensionIsALength(string text, string inInches) =>
        Assert.Equal(inInches, InchLetters.Of(text, Reader.Parse("en.in.point.light"), true));

    [Fact]
    public void NoFigureOfAViewStaysInMm()
    {
        Reader reader = Reader.Parse("es.in.comma.light");
        reader.Apply();
        DrawnSheets sheets = DrawnSheets.Of(Heron.Value, reader);
        string[] kept =
        [
            .. Stage
                // What is laid on sheets of stock takes too long to find here.
                .All.Where(stage => stage != Stage.Stock)
                .SelectMany(stage => stage.Parts)
                .SelectMany(part =>
                    part.Sheets.SelectMany(sheet => sheets.ViewsOf([sheet]).Take(MostOfASheet))
                )
                .Where(view => !view.IsText)
                .SelectMany(view => view.In(Room))
                .Where(picture => picture.IsInInches)
                .SelectMany(picture =>
                    Texts(picture).Append(picture.Name).Select(text => $"{picture.Name}: {text}")
                )
                .Where(text => Length().IsMatch(text)),
        ];
        Assert.Empty(kept);
    }

    [Fact]
    public void TheSameViewIsInInchesForOneReaderAndInMmForAnotherAndAsItPrints()
    {
        ViewPicture Board(string reader) =>
            DrawnSheets.Of(Heron.Value, Reader.Parse(reader)).ViewsOf(["workboard"])[0].In(Room)[0];
        string[] inches = Texts(Board("en.in.point.light"));
        string[] mm = Texts(Board("en.mm.point.light"));
        // Twice the half of the lower bout and the margin: 368 + 2 · 50.
        Assert.Contains("468", mm);
        Assert.Contains("18.425″", inches);
        Assert.DoesNotContain("468", inches);
        // Where the nut is, and the deepest place.
        Assert.Contains("0″", inches);
        Assert.Contains("2.80", mm);
        Assert.Contains(".1102″", inches);
        Assert.DoesNotContain(mm, text => text.Contains('″'));
    }

    private static string[] Texts(ViewPicture picture) =>
        [
            .. Text()
                .Matches(picture.Svg)
                .Select(match => WebUtility.HtmlDecode(match.Groups[1].Value)),
        ];

    [GeneratedRegex("<text[^>]*>([^<]*)</text>")]
    private static partial Regex Text();

    // A bare figure with decimals, or one with the unit of mm.
    [GeneratedRegex(@"(?<![\w.,″])\d+[.,]\d+(?![\d\w″.,]|\s?(°|%|N\b|Hz|g\b|kg|in\b))|\d mm\b")]
    private static partial Regex Length();
}
