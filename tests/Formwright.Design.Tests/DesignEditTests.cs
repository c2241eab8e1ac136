using Formwright.Testing;
using Xunit;

namespace Formwright.Design.Tests;

public sealed class DesignEditTests
{
    private const string Text =
        "# top\n[a] # first\nx = 1   # one\n\n[b]\ny = { p = 1, q = 2 } # two\n\n[[c]]\nat = 1\n[[c]]\nat = 2 # second\n";

    [Theory]
    [InlineData("a.x", "5.5", "x = 5.5   # one")]
    [InlineData("b.y.q", "\"3/4 in\"", "y = { p = 1, q = \"3/4 in\" } # two")]
    [InlineData("b.y.r", "7", "y = { p = 1, q = 2, r = 7 } # two")]
    [InlineData("c[1].at", "9", "at = 9 # second")]
    [InlineData("a.z", "3", "x = 1   # one\nz = 3\n")]
    [InlineData("d.e", "4", "\n[d]\ne = 4\n")]
    [InlineData("c[0].width", "6", "at = 1\nwidth = 6\n[[c]]")]
    public void Set_changes_only_what_it_names(string key, string value, string expected)
    {
        string edited = DesignEdit.Set(Text, key, value);
        Assert.Contains(expected, edited, StringComparison.Ordinal);
        Assert.Contains("# top", edited, StringComparison.Ordinal);
        Assert.Contains("# second", edited, StringComparison.Ordinal);
    }

    [Fact]
    public void Remove_takes_a_line_or_a_pair()
    {
        Assert.DoesNotContain("x = 1", DesignEdit.Remove(Text, "a.x"), StringComparison.Ordinal);
        Assert.Contains(
            "y = { q = 2 }",
            DesignEdit.Remove(Text, "b.y.p"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "y = { p = 1 }",
            DesignEdit.Remove(Text, "b.y.q"),
            StringComparison.Ordinal
        );
        Assert.Equal(Text, DesignEdit.Remove(Text, "b.none"));
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Examples_read(string model)
    {
        DesignReading reading = DesignText.Load(Repository.PathOf("examples", $"{model}.toml"));
        Assert.Empty(reading.Diagnostics);
        Assert.Equal(12, reading.Design!.Identity.JoinFret);
    }

    [Fact]
    public void All_faults_come_out_at_once_with_their_places()
    {
        const string faulty =
            "[instrument]\nscale = \"18 parsecs\"\n[outline]\nbody_lenght = 488\nupper_bout = { at = 1, width = nan }\n";
        DesignReading reading = DesignText.Parse(faulty, "f.toml");
        string[] lines = [.. reading.Diagnostics.Select(d => d.ToString())];
        Assert.Contains(
            lines,
            line =>
                line.StartsWith("f.toml:2:9:", StringComparison.Ordinal)
                && line.Contains("parsecs", StringComparison.Ordinal)
        );
        Assert.Contains(
            lines,
            line =>
                line.StartsWith("f.toml:4:1:", StringComparison.Ordinal)
                && line.Contains("body_length", StringComparison.Ordinal)
        );
        Assert.Contains(lines, line => line.StartsWith("f.toml:5:32:", StringComparison.Ordinal));
    }
}
