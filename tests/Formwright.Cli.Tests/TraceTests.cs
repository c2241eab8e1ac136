using System.Text.Json;
using Formwright.Testing;
using Xunit;

namespace Formwright.Cli.Tests;

/// <summary>The commands about old outlines, on files that other libraries wrote.</summary>
public sealed class TraceTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    private static string Given(string name) =>
        Repository.PathOf("tests", "Formwright.Trace.Tests", "files", name);

    private string Here(string name) => shell.PathOf(name);

    [Fact]
    public void From_a_traced_file_to_a_pack()
    {
        Outcome import = shell
            .Run("import", Given("outline-2000.dxf"), "--out", "old.toml", "--sheets", "old.pdf")
            .Ended(0);
        Assert.Contains("bump  1: treble side", import.Out, StringComparison.Ordinal);
        Assert.Contains("0.32 mm proud", import.Out, StringComparison.Ordinal);
        Assert.Contains("its run is kept", import.Out, StringComparison.Ordinal);
        Assert.Equal(["old.pdf", "old.toml"], shell.Names());
        string text = File.ReadAllText(Here("old.toml"));
        Assert.Contains("name = \"outline-2000\"", text, StringComparison.Ordinal);
        Assert.Contains("[outline.curve]", text, StringComparison.Ordinal);
        // What was taken in is the outline that the pack is built on.
        Outcome compared = Shell
            .Here("compare", Given("outline-2000.dxf"), Here("old.toml"), "--json")
            .Ended(0);
        Assert.InRange(Figure(compared, "compare", "largest_mm"), 0, 0.05);
        shell.Run("pack", "old.toml", "--out", "out").Ended(0);
        Assert.True(File.Exists(Here("out/pack.json")));
    }

    [Fact]
    public void Fair_prints_the_report_keys_and_writes_nothing()
    {
        Outcome outcome = Shell.Here("fair", Given("outline-2000.dxf"), "--json").Ended(0);
        using JsonDocument json = JsonDocument.Parse(outcome.Out);
        JsonElement trace = json.RootElement.GetProperty("trace");
        Assert.False(json.RootElement.TryGetProperty("compare", out _));
        Assert.Equal("outline-2000.dxf", trace.GetProperty("file").GetString());
        Assert.Equal("symmetry", trace.GetProperty("centreline").GetString());
        JsonElement bump = Assert.Single(trace.GetProperty("bumps").EnumerateArray());
        Assert.Equal("treble", bump.GetProperty("side").GetString());
        Assert.True(bump.GetProperty("is_proud").GetBoolean());
        Assert.Equal(Shell.Here("report", Given("outline-2000.dxf")).Ended(0).Out, outcome.Out);
    }

    // The example's bumps were planted: 0.4 mm over 28, -0.25 over 18 and 0.2 over 45, at 520, 190 and 330 mm along the sides.
    [Fact]
    public void The_guide_says_what_the_command_says()
    {
        string guide = File.ReadAllText(Repository.PathOf("docs", "guide", "trace.md"));
        string[] lines = Shell
            .Here("fair", Repository.PathOf("examples", "old-template.csv"))
            .Ended(0)
            .Out.TrimEnd('\n')
            .Split('\n');
        Assert.Equal("The table names no unit; mm was taken.", lines[0]);
        Assert.Equal(3, lines.Count(line => line.StartsWith("bump", StringComparison.Ordinal)));
        Assert.All(lines[1..], line => Assert.Contains(line, guide, StringComparison.Ordinal));
    }

    [Fact]
    public void A_known_length_sets_the_scale_and_a_choice_of_side_is_kept()
    {
        Outcome outcome = Shell
            .Here(
                "fair",
                Given("outline-lines-r12.dxf"),
                "--largest-width",
                "36.8 cm",
                "--sides",
                "bass",
                "--json"
            )
            .Ended(0);
        using JsonDocument json = JsonDocument.Parse(outcome.Out);
        JsonElement bout = json.RootElement.GetProperty("trace").GetProperty("lower_bout");
        Assert.Equal(368, bout.GetProperty("width_mm").GetDouble(), 1e-3);
    }

    [Fact]
    public void Adapt_keeps_the_character_and_all_else_of_the_file()
    {
        Shell.Here("new", Here("heron.toml")).Ended(0);
        Outcome outcome = Shell
            .Here(
                "adapt",
                Here("heron.toml"),
                "--out",
                Here("small.toml"),
                "--scale",
                "615",
                "--sheets",
                Here("both.pdf")
            )
            .Ended(0);
        Assert.Contains("Kept:", outcome.Out, StringComparison.Ordinal);
        string text = File.ReadAllText(Here("small.toml"));
        Assert.Contains("scale = 615", text, StringComparison.Ordinal);
        Assert.Contains("body_length = 461.72", text, StringComparison.Ordinal);
        // The fairest curve through features in proportion is the same curve in proportion.
        Outcome compared = Shell
            .Here("compare", Here("heron.toml"), Here("small.toml"), "--json")
            .Ended(0);
        Assert.InRange(Figure(compared, "compare", "character_rms_share"), 0, 0.002);
        Assert.Equal(["both.pdf", "heron.toml", "small.toml"], shell.Names());
        Assert.Contains(
            "is there already",
            Shell.Here("adapt", Here("heron.toml"), "--out", Here("small.toml")).Ended(2).Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("bomb.svg", "<!DOCTYPE x [<!ENTITY a \"a\">]><svg>&a;</svg>")]
    [InlineData("cut.dxf", "  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n1.0")]
    [InlineData("three.csv", "0;0\n100;50\n200;0\n")]
    [InlineData("empty.csv", "")]
    public void A_bad_file_is_one_diagnostic_and_writes_nothing(string name, string text)
    {
        shell.Write(name, text);
        Outcome outcome = Shell
            .Here("import", Here(name), "--out", Here("new.toml"), "--sheets", Here("new.pdf"))
            .Ended(2);
        Assert.Equal("", outcome.Out);
        Assert.StartsWith(
            Here(name) + ":",
            Assert.Single(outcome.Error.TrimEnd('\n').Split('\n')),
            StringComparison.Ordinal
        );
        Assert.Equal([name], shell.Names());
    }

    [Theory]
    [InlineData("'0'", "fair", "a.svg", "--tolerance", "0")]
    [InlineData("left, right", "fair", "a.svg", "--heel", "up")]
    [InlineData("furlong", "fair", "a.svg", "--unit", "furlong")]
    [InlineData("--out is missing.", "import", "a.svg")]
    [InlineData("SECOND is missing.", "compare", "a.svg")]
    [InlineData("There is no file 'a.svg'.", "fair", "a.svg")]
    public void Faults_of_usage_are_told(string word, params string[] args) =>
        Assert.Contains(word, Shell.Here(args).Ended(2).Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("import", "--like", "--body-length")]
    [InlineData("fair", "--smallest", "--sheets")]
    [InlineData("compare", "FIRST SECOND", "--json")]
    [InlineData("adapt", "--scale", "--lower-bout")]
    public void Help(string command, string one, string two)
    {
        string text = Shell.Here(command, "--help").Ended(0).Out;
        Assert.Contains(one, text, StringComparison.Ordinal);
        Assert.Contains(two, text, StringComparison.Ordinal);
        Shell.Here(command, "--help", "--language", "es").Ended(0);
    }

    private static double Figure(Outcome outcome, string part, string key)
    {
        using JsonDocument json = JsonDocument.Parse(outcome.Out);
        return json.RootElement.GetProperty(part).GetProperty(key).GetDouble();
    }
}
