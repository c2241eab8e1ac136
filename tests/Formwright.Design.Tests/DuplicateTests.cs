using Xunit;

namespace Formwright.Design.Tests;

/// <summary>Every way in which TOML 1.0 forbids a key or a table to stand twice; each is told with both lines.</summary>
public sealed class DuplicateTests
{
    [Theory]
    [InlineData("a = 1\na = 2", 2, 1, "a", 1)]
    [InlineData("\"a\" = 1\na = 2", 2, 1, "a", 1)]
    [InlineData("a = 1\na.b = 2", 2, 1, "a", 1)]
    [InlineData("a.b = 1\na = 2", 2, 1, "a", 1)]
    [InlineData("a.b = 1\na.b = 2", 2, 3, "a.b", 1)]
    [InlineData("a = { b = 1 }\na.c = 2", 2, 1, "a", 1)]
    [InlineData("a = { b = 1, b = 2 }", 1, 14, "a.b", 1)]
    [InlineData("a = { b.c = 1, b = 2 }", 1, 16, "a.b", 1)]
    [InlineData("[a]\n[a]", 2, 2, "a", 1)]
    [InlineData("a.b = 1\n[a]", 2, 2, "a", 1)]
    [InlineData("a = 1\n[a]", 2, 2, "a", 1)]
    [InlineData("a = 1\n[a.b]", 2, 2, "a", 1)]
    [InlineData("a = { b = 1 }\n[a]", 2, 2, "a", 1)]
    [InlineData("a = { b = 1 }\n[a.c]", 2, 2, "a", 1)]
    [InlineData("a = { b = { c = 1 } }\n[a.b]", 2, 2, "a", 1)]
    [InlineData("[a.b]\nx = 1\n[a]\nb.c = 1", 4, 1, "a.b", 1)]
    [InlineData("[a.b.c]\n[a]\nb.d = 1", 3, 1, "a.b", 1)]
    [InlineData("[a]\n[[a]]", 2, 3, "a", 1)]
    [InlineData("[[a]]\n[a]", 2, 2, "a", 1)]
    [InlineData("[[a.b]]\n[a.b]", 2, 2, "a.b", 1)]
    [InlineData("[a.b]\n[[a]]", 2, 3, "a", 1)]
    [InlineData("a = []\n[[a]]", 2, 3, "a", 1)]
    [InlineData("a = [{ b = 1 }]\n[[a]]", 2, 3, "a", 1)]
    [InlineData("a = [{ b = 1 }]\n[a.c]", 2, 2, "a", 1)]
    [InlineData("[f]\na.b = 1\n[f.a]", 3, 2, "f.a", 2)]
    public void Twice_is_told_with_both_places(
        string text,
        int line,
        int column,
        string key,
        int first
    )
    {
        string expected =
            $"{line}:{column}: '{key}' stands here a second time; the first is on line {first}. Keep one.";
        Assert.Contains(expected, Reading.Faults(text));
        Assert.Single(
            Reading.Faults(text),
            fault => fault.Contains("second time", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("[a.b]\n[a]")]
    [InlineData("[f]\na.b = 1\n[f.a.c]")]
    [InlineData("[[a]]\n[[a]]\n[a.b]\n[[a]]\n[a.b]")]
    [InlineData("[a]\nb.c = 1\nb.d = 2")]
    [InlineData("a.b = 1\na.c = 2")]
    [InlineData("a = [{ b = 1 }, { b = 2 }]")]
    public void What_the_standard_allows_is_no_clash(string text) =>
        Assert.DoesNotContain(
            Reading.Faults(text),
            fault => fault.Contains("second time", StringComparison.Ordinal)
        );
}
