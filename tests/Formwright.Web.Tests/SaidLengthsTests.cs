using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Web.Reading;
using Formwright.Words;

namespace Formwright.Web.Tests;

public sealed partial class SaidLengthsTests
{
    [Theory]
    [InlineData("The ramp is 2.40 mm at the nut.", "The ramp is 0.0945 in at the nut.")]
    [InlineData("1.50 ± 0.20 mm is wanted", "0.0591 ± 0.0079 in is wanted")]
    [InlineData("645 × 80 × 19.5 mm", "25.39 × 3.15 × 0.768 in")]
    [InlineData("Common practice: 8 to 12 mm.", "Common practice: 0.31 to 0.47 in.")]
    [InlineData("R3 at fret 12: 0.5 mm", "R3 at fret 12: 0.020 in")]
    [InlineData("2 mg/m³, 127 mm², 5 mm/s, H2", "2 mg/m³, 127 mm², 5 mm/s, H2")]
    public void LengthsOfASentenceAreTheReaders(string said, string inInches)
    {
        Assert.Equal(inInches, SaidLengths.Of(said, Reader.Parse("en.in.point.light")));
        Assert.Equal(said, SaidLengths.Of(said, Reader.Parse("en.mm.point.light")));
    }

    [Fact]
    public void TheDecimalMarkIsTheReaders() =>
        Assert.Equal(
            "cae 0,0945 in; de 0,31 a 0,47 in",
            SaidLengths.Of("cae 2,40 mm; de 8 a 12 mm", Reader.Parse("es.in.comma.light"))
        );

    /// <summary>A figure that stayed in mm beside one in inches would be read as inches, so every sentence says the unit of each.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void NoSentenceOfTheEngineKeepsALengthInMm(string language)
    {
        Reader reader = Reader.Parse($"{language}.in.point.light");
        using Language spoken = Language.Use(language);
        CultureInfo.CurrentCulture = reader.Culture;
        List<string> kept = [];
        foreach (Wording words in (Wording[])[InstrumentWords.Of, JigsWords.Of])
        {
            foreach (string key in words.Keys(CultureInfo.InvariantCulture))
            {
                string text = words[key];
                if (!text.Contains(" mm", StringComparison.Ordinal))
                {
                    continue;
                }

                // What is written with decimals is a figure, the rest are names and counts.
                object[] filled = [.. Enumerable.Range(0, 10).Select(i => (object)77.77)];
                string said = SaidLengths.Of(
                    string.Format(reader.Culture, Place().Replace(text, "N"), filled),
                    reader
                );
                if (
                    said.Contains(" mm ", StringComparison.Ordinal)
                        && Number().IsMatch(said[..said.IndexOf(" mm ", StringComparison.Ordinal)])
                    || Kept().IsMatch(said)
                )
                {
                    kept.Add($"{key}: {said}");
                }
            }
        }

        Assert.Empty(kept);
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\d$")]
    private static partial Regex Number();

    // 77.77 in all its roundings, unless it is one of another unit.
    [GeneratedRegex(
        @"(?<![\d.])7[78](\.[78]+)?(?![\d.]*\d)(?!\s?(%|N\b|kg|°|h\b|g\b|cents?\b|Hz|GPa))"
    )]
    private static partial Regex Kept();
}
