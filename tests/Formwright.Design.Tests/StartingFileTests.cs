using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Testing;
using Formwright.Words;
using Xunit;

namespace Formwright.Design.Tests;

public sealed partial class StartingFileTests
{
    public static TheoryData<string, string, bool> Cases()
    {
        TheoryData<string, string, bool> cases = [];
        foreach (string model in DesignModels.Names)
        {
            cases.Add(model, "en", false);
            cases.Add(model, "en", true);
            cases.Add(model, "es", false);
            cases.Add(model, "es", true);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_starting_file_is_the_model_in_the_makers_language(
        string model,
        string language,
        bool allKeys
    )
    {
        using IDisposable spoken = Language.Use(language);
        string text = StartingFile.Text(model, allKeys);
        Assert.Equal(Described(DesignModels.TextOf(model), language), Described(text, language));
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.StartsWith(
            language == "es"
                ? "# " + Named(model) + ": un archivo"
                : "# " + Named(model) + ": a starting",
            text,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("plover")]
    public void What_is_commented_out_says_the_true_default(string model)
    {
        // Every key that has a default of its own is taken in: the design stays the same.
        string text = StartingFile.Text(model, allKeys: true);
        bool off = false;
        string taken = string.Join(
            '\n',
            text.Split('\n')
                .Select(line =>
                {
                    off = line.TrimStart('#').StartsWith('[') ? line[0] == '#' : off;
                    return !off && OffLine().IsMatch(line) ? line[1..] : line;
                })
        );
        Assert.Equal(Described(text, "en"), Described(taken, "en"));
        Assert.True(taken.Split('\n').Count(line => KeyLine().IsMatch(line)) > 60);
    }

    [Fact]
    public void The_starting_file_of_heron_looks_as_approved() =>
        Approved.Check("Formwright.Design.Tests", "heron.start.toml", StartingFile.Text("heron"));

    [Fact]
    public void There_is_no_other_model() =>
        Assert.Throws<ArgumentException>(() => StartingFile.Text("../heron"));

    [Fact]
    public void Models_are_the_three_invented_ones() =>
        Assert.Equal(["dunlin", "heron", "plover"], DesignModels.Names);

    private static string Named(string model) =>
        CultureInfo.InvariantCulture.TextInfo.ToTitleCase(model);

    // Records print their members; lists are told by their entries.
    private static string Described(string text, string language)
    {
        DesignReading reading = DesignText.Parse(text, "f");
        Assert.Empty(reading.Diagnostics);
        InstrumentDesign design = reading.Design!;
        Sections.SheetLanguage spoken =
            language == "es" ? Sections.SheetLanguage.Es : Sections.SheetLanguage.En;
        return System.Text.Json.JsonSerializer.Serialize(
            design with
            {
                Sheets = design.Sheets with { Language = spoken },
            },
            Options
        );
    }

    private static readonly System.Text.Json.JsonSerializerOptions Options = new()
    {
        NumberHandling = System
            .Text
            .Json
            .Serialization
            .JsonNumberHandling
            .AllowNamedFloatingPointLiterals,
    };

    [GeneratedRegex("^#[a-z0-9_]+ = .+$")]
    private static partial Regex OffLine();

    [GeneratedRegex("^[a-z0-9_]+ = .+$")]
    private static partial Regex KeyLine();
}
