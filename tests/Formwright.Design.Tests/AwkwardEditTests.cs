using Formwright.Design.Reading;
using Xunit;

namespace Formwright.Design.Tests;

/// <summary>Edits on awkward but good texts. A fuzz target of the benches asks the same of millions of texts, with another reader.</summary>
public sealed class AwkwardEditTests
{
    [Theory]
    [InlineData("\uFEFF[a]\nx = 1 # one\n", "a.x", "2", "\uFEFF[a]\nx = 2 # one\n")]
    [InlineData("[a]\r\nx = 1\r\n", "a.y", "2", "[a]\r\nx = 1\r\ny = 2\r\n")]
    [InlineData("[a]\nx = 1", "a.y", "2", "[a]\nx = 1\ny = 2\n")]
    [InlineData("", "a.y", "2", "[a]\ny = 2\n")]
    [InlineData("", "y", "2", "y = 2\n")]
    [InlineData("[a]\nx = 1\n", "y", "2", "y = 2\n[a]\nx = 1\n")]
    [InlineData("x = 1 # one\n[a]\n", "y", "2", "x = 1 # one\ny = 2\n[a]\n")]
    [InlineData("a.b = 1\n", "a.c", "2", "a.b = 1\na.c = 2\n")]
    [InlineData("[a]\nb.c = 1\n[d]\n", "a.b.e.f", "2", "[a]\nb.c = 1\nb.e.f = 2\n[d]\n")]
    [InlineData("[a.b]\nx = 1\n", "a.y", "2", "[a.b]\nx = 1\n\n[a]\ny = 2\n")]
    [InlineData("a = {}\n", "a.b.c", "2", "a = { b.c = 2 }\n")]
    [InlineData("a = { x = 1, }\n", "a.y", "2", "a = { x = 1, y = 2, }\n")]
    [InlineData("a = {\n  x = 1 # one\n}\n", "a.y", "2", "a = {\n  x = 1, y = 2 # one\n}\n")]
    [InlineData(
        "a = [{ x = 1 }, { x = 2 }] # two\n",
        "a[1].x",
        "5",
        "a = [{ x = 1 }, { x = 5 }] # two\n"
    )]
    [InlineData("a = [{ x = 1 }]\n", "a[1].x", "5", "a = [{ x = 1 }, { x = 5 }]\n")]
    [InlineData("a = []\n", "a[0].x", "5", "a = [{ x = 5 }]\n")]
    [InlineData(
        "[[a]]\nx = 1 # one\n\n[b]\n",
        "a[1].x",
        "5",
        "[[a]]\nx = 1 # one\n\n[[a]]\nx = 5\n\n[b]\n"
    )]
    [InlineData("[b]\n", "a[0].x", "5", "[b]\n\n[[a]]\nx = 5\n")]
    [InlineData(
        "[[a]]\nx = 1\n[[a]]\nx = 2\n",
        "a[0].b.c",
        "5",
        "[[a]]\nx = 1\nb.c = 5\n[[a]]\nx = 2\n"
    )]
    [InlineData("a = \"\"\"\nx = 1\n\"\"\" # two\nb = 1\n", "a", "'y'", "a = 'y' # two\nb = 1\n")]
    [InlineData("\"a\".'b' = 1\n", "a.b", "2", "\"a\".'b' = 2\n")]
    [InlineData("[a]\nx = \"😀\" # one\ny = 1\n", "a.y", "2", "[a]\nx = \"😀\" # one\ny = 2\n")]
    public void Set_is_exact(string text, string key, string value, string expected) =>
        Assert.Equal(expected, DesignEdit.Set(text, key, value));

    [Theory]
    [InlineData("\uFEFFx = 1 # one\ny = 2\n", "x", "\uFEFFy = 2\n")]
    [InlineData("[a]\nx = [\n1, # one\n2 ] # two\ny = 2\n", "a.x", "[a]\ny = 2\n")]
    [InlineData("a = { x = 1, y = 2 } # k\n", "a.x", "a = { y = 2 } # k\n")]
    [InlineData("a = { x = 1, y = 2 } # k\n", "a.y", "a = { x = 1 } # k\n")]
    [InlineData("a = { x = 1 }\n", "a.x", "a = {  }\n")]
    [InlineData("a = { x = 1 }\nb = 1\n", "a", "b = 1\n")]
    [InlineData("a = { b.x = 1, c = 2, b.y = 3 }\n", "a.b", "a = { c = 2 }\n")]
    [InlineData("[a]\nx = 1\n\n[a.b]\ny = 1\n\n[c]\n", "a", "[c]\n")]
    [InlineData("[a]\nx = 1\n# my own words\ny = 1\n\n[c]\n", "a", "[c]\n")]
    [InlineData(
        "[[a]]\nx = 1\n\n[[a]]\nx = 2 # two\n\n[a.b]\nz = 1\n\n[c]\n",
        "a[1]",
        "[[a]]\nx = 1\n\n[c]\n"
    )]
    [InlineData("a = [{ x = 1 }, { x = 2 }]\n", "a[0]", "a = [{ x = 2 }]\n")]
    [InlineData("a = [{ x = 1 }, { x = 2 }]\n", "a[1]", "a = [{ x = 1 }]\n")]
    [InlineData("[[a]]\nx = 1\n[[a]]\nx = 2\n", "a", "")]
    [InlineData("[a]\nx = 1\n", "a.y", "[a]\nx = 1\n")]
    [InlineData("[[a]]\nx = 1\n", "a[7].x", "[[a]]\nx = 1\n")]
    public void Remove_is_exact(string text, string key, string expected) =>
        Assert.Equal(expected, DesignEdit.Remove(text, key));

    [Fact]
    public void A_list_in_pieces_is_one_list()
    {
        // TOML 1.0: [[a]] adds to a, whatever stands between. (Tomlyn's own model keeps the last piece only.)
        const string pieces = "[[harmonic_bars]]\nat = 88\n";
        string text = pieces + Reading.Whole + "[[harmonic_bars]]\nat = 206\n";
        Assert.Equal(
            [88, 206],
            DesignText.Parse(text, "f").Design!.HarmonicBars.Select(bar => bar.AtMm)
        );
        string edited = DesignEdit.Set(text, "harmonic_bars[1].at", "207");
        Assert.Equal(text.Replace("206", "207", StringComparison.Ordinal), edited);
        Assert.Equal(text[pieces.Length..], DesignEdit.Remove(text, "harmonic_bars[0]"));
    }

    [Theory]
    [InlineData("a = ", "a", "1")]
    [InlineData("a = 1\na = 2\n", "a", "1")]
    [InlineData("x = \"\\", "a", "1")]
    public void A_text_that_does_not_parse_is_refused(string text, string key, string value) =>
        Assert.Equal(
            "text",
            Assert.Throws<ArgumentException>(() => DesignEdit.Set(text, key, value)).ParamName
        );

    [Theory]
    [InlineData("1\nx = 2")]
    [InlineData("1 # note")]
    [InlineData(" 1")]
    [InlineData("x")]
    [InlineData("1, 2")]
    [InlineData("12,5")]
    [InlineData("\"open")]
    [InlineData("1\n[b]")]
    public void What_is_not_one_value_is_refused(string value) =>
        Assert.Equal(
            "value",
            Assert.Throws<ArgumentException>(() => DesignEdit.Set("a = 1\n", "a", value)).ParamName
        );

    [Theory]
    [InlineData("[a]\nx = 1\n", "a")]
    [InlineData("[a]\nx = 1\n", "a.x.y")]
    [InlineData("[[a]]\nx = 1\n", "a[3].x")]
    [InlineData("[[a]]\nx = 1\n", "a[0]")]
    [InlineData("[[a]]\nx = 1\n", "a.x")]
    [InlineData("a = 1\n", "a[0].x")]
    [InlineData("a = 1\n", "b c")]
    [InlineData("a = 1\n", "b..c")]
    [InlineData("a = 1\n", "b[x].c")]
    [InlineData("a = 1\n", "ñ")]
    public void A_key_that_names_no_place_for_a_value_is_refused(string text, string key) =>
        Assert.Throws<ArgumentException>(() => DesignEdit.Set(text, key, "1"));

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Every_key_of_a_model_can_be_set_and_taken_back(string model)
    {
        string text = DesignModels.TextOf(model);
        foreach (KeySpec spec in DesignText.Keys().Where(spec => spec.Kind == KeyKind.Length))
        {
            if (spec.Path.Contains("[]", StringComparison.Ordinal))
            {
                continue;
            }

            string edited = DesignEdit.Set(text, spec.Path, "7.25");
            string again = DesignEdit.Set(edited, spec.Path, "8");
            Assert.Contains("7.25", edited, StringComparison.Ordinal);
            Assert.Equal(edited.Replace("7.25", "8", StringComparison.Ordinal), again);
            Assert.DoesNotContain(
                "7.25",
                DesignEdit.Remove(edited, spec.Path),
                StringComparison.Ordinal
            );
        }
    }
}
