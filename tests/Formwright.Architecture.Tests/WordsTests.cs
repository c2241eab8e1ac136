using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Formwright.Findings;
using Formwright.Testing;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>Every text stands in both languages with the same places, is used, and is there where the code asks for it.</summary>
public sealed partial class WordsTests
{
    private static readonly Lazy<HashSet<string>> Literals = new(() =>
        [.. Literal().Matches(Sources.Everything).Select(match => match.Groups["text"].Value)]
    );

    // $"part.{id}" asks for whatever fits it.
    private static readonly Lazy<Regex[]> Patterns = new(() =>
        [
            .. Interpolated()
                .Matches(Sources.Everything)
                .Select(match => match.Groups["text"].Value)
                .Where(text => Letters().IsMatch(Hole().Replace(text, "")))
                .Distinct()
                .Select(text => new Regex(
                    $"^{string.Join(".+", Hole().Split(text).Select(Regex.Escape))}$"
                )),
        ]
    );

    // A table names its texts by what follows the first point.
    private static readonly Lazy<HashSet<string>> Cells = new(() =>
        [.. Sources.Everything.Split('\n', '\t')]
    );

    public static TheoryData<string> Projects() =>
        [.. Sources.Projects.Where(project => File.Exists(Resx(project, "")))];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Both_languages_have_the_same_texts_with_the_same_places(string project)
    {
        Dictionary<string, string> english = Texts(project, "");
        Dictionary<string, string> spanish = Texts(project, ".es");
        Assert.Empty(english.Keys.Except(spanish.Keys));
        Assert.Empty(spanish.Keys.Except(english.Keys));
        foreach ((string key, string text) in english)
        {
            Assert.True(text.Length == 0 == (spanish[key].Length == 0), key);
            Assert.True(
                PlacesOf(text).SequenceEqual(PlacesOf(spanish[key])),
                $"{key}: {text} / {spanish[key]}"
            );

            // Throws where a brace is left alone; figures stand in for whatever comes.
            object[] figures = [1.5, 2.5, 3.5, 4.5, 5.5, 6.5, 7.5, 8.5];
            _ = string.Format(CultureInfo.InvariantCulture, text, figures);
            _ = string.Format(CultureInfo.InvariantCulture, spanish[key], figures);
        }
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_built_assembly_carries_both_languages(string project)
    {
        if (Sources.AssemblyOf(project) is not { } assembly)
        {
            return;
        }

        Words.Wording wording = Words.Wording.Of(assembly, $"Formwright.{project}");
        Assert.Equal(Texts(project, "").Count, wording.Keys(CultureInfo.InvariantCulture).Count);
        Assert.Equal(
            Texts(project, ".es").Count,
            wording.Keys(CultureInfo.GetCultureInfo("es")).Count
        );
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Every_text_is_asked_for_somewhere(string project)
    {
        bool isUnfinished =
            project == "Web" && !Sources.Everything.Contains("@page", StringComparison.Ordinal);
        Assert.SkipWhen(isUnfinished, "there is no page yet");
        HashSet<string> ofRules = [.. RulesOf(project).SelectMany(RuleKeys)];
        foreach (string key in Texts(project, "").Keys)
        {
            string[] parts = key.Split('.', 2);
            bool isOfKey = project == "Design" && parts[0] is "key" or "group";
            bool isAsked =
                isOfKey
                || ofRules.Contains(key)
                || Literals.Value.Contains(key)
                // In a page a quoted attribute may hold the quoted key, which pairs of quotes can't tell apart.
                || Sources.Everything.Contains($"\"{key}\"", StringComparison.Ordinal)
                || Sources.Everything.Contains($"$\"{parts[0]}.{{", StringComparison.Ordinal)
                || Sources.Everything.Contains($"\"{parts[0]}.\" + ", StringComparison.Ordinal)
                || Cells.Value.Contains(parts[^1])
                || Patterns.Value.Any(pattern => pattern.IsMatch(key));
            Assert.True(isAsked, $"nobody asks for '{key}' of {project}");
        }
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Every_text_that_is_asked_for_is_there(string project)
    {
        Dictionary<string, string> texts = Texts(project, "");
        foreach (string path in Sources.Files(project))
        {
            foreach (Match match in Asked().Matches(File.ReadAllText(path)))
            {
                string key = match.Groups["key"].Value;
                Assert.True(texts.ContainsKey(key), $"{path} asks for '{key}'");
            }
        }

        foreach (string key in RulesOf(project).SelectMany(RuleKeys))
        {
            Assert.True(texts.ContainsKey(key), $"no text '{key}'");
        }
    }

    [Theory]
    [InlineData("en", "docs/reference/findings.md")]
    [InlineData("es", "docs/reference/findings.es.md")]
    public void The_reference_of_findings_is_up_to_date(string language, string page)
    {
        using IDisposable spoken = Words.Language.Use(language);
        Rule[] rules = [.. Sources.Projects.SelectMany(RulesOf)];
        Approved.CheckFile(Repository.PathOf(page), RuleBook.Markdown(rules));
    }

    private static IEnumerable<Rule> RulesOf(string project) =>
        Sources.AssemblyOf(project) is { } assembly ? RuleBook.Of(assembly) : [];

    private static IEnumerable<string> RuleKeys(Rule rule) =>
        new[] { "title", "message", "cure", "source" }.Select(part => $"{rule.Code}.{part}");

    private static string Resx(string project, string language) =>
        Path.Combine(Path.GetDirectoryName(Sources.ProjectFile(project))!, $"Words{language}.resx");

    private static Dictionary<string, string> Texts(string project, string language) =>
        XDocument
            .Load(Resx(project, language))
            .Root!.Elements("data")
            .ToDictionary(
                each => each.Attribute("name")!.Value,
                each => each.Element("value")!.Value
            );

    private static IEnumerable<string> PlacesOf(string text) =>
        Place()
            .Matches(text.Replace("{{", "", StringComparison.Ordinal))
            .Select(match => match.Groups["number"].Value)
            .Distinct()
            .Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{(?<number>\d+)[^}]*\}")]
    private static partial Regex Place();

    [GeneratedRegex("(?<![$\"\\\\])\"(?<text>(?:[^\"\\\\\\n]|\\\\.)*)\"")]
    private static partial Regex Literal();

    [GeneratedRegex("\\$\"(?<text>(?:[^\"\\\\\\n]|\\\\.)*)\"")]
    private static partial Regex Interpolated();

    [GeneratedRegex(@"\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}")]
    private static partial Regex Hole();

    [GeneratedRegex(@"[a-z]{2}")]
    private static partial Regex Letters();

    // Words["key"], CliWords.Of["key"], Words.Format("key", DesignWords.Of.Format("key".
    [GeneratedRegex("(?:Words|Words\\.Of)(?:\\[\\s*|\\.Format\\(\\s*)\"(?<key>[^\"]+)\"")]
    private static partial Regex Asked();
}
