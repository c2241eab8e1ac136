using Xunit;

namespace Formwright.Design.Tests;

public sealed class SyntaxFaultTests
{
    [Theory]
    [InlineData(
        "ramp = 1,5",
        "2:8: A number takes a point: ramp = 1.5. With a comma it goes in quotes: ramp = \"1,5\"."
    )]
    [InlineData(
        "ramp = 18 mm",
        "2:8: A length with a unit or a fraction goes in quotes: ramp = \"18 mm\"."
    )]
    [InlineData(
        "ramp = 3/4 in # drop",
        "2:8: A length with a unit or a fraction goes in quotes: ramp = \"3/4 in\"."
    )]
    [InlineData(
        "ramp = 1 3/4\"",
        "2:8: A length with a unit or a fraction goes in quotes: ramp = \"1 3/4 in\"."
    )]
    [InlineData("ramp = flat", "2:8: A text goes in quotes: ramp = \"flat\".")]
    [InlineData("ramp = “1 mm”", "2:8: The text for 'ramp' takes straight quotes: \"…\".")]
    [InlineData("ramp = Yes", "2:8: Yes and no are written true and false, in small letters.")]
    [InlineData("ramp: 5", "2:5: After 'ramp' goes an =, not a colon.")]
    [InlineData(
        "ramp 5",
        "2:6: 'ramp 5' is neither a heading nor a key with its value: key = value."
    )]
    [InlineData("ramp =", "2:6: 'ramp' has no value after its =.")]
    [InlineData(
        "ramp = 6 \r\"",
        "2:10: Here stands a line end that is not read (CR alone). Save the file with LF or CR LF line ends."
    )]
    [InlineData("ramp = \u2028 #", "2:8: 'ramp' has no value after its =.")]
    [InlineData("ramp = \u00A0", "2:6: 'ramp' has no value after its =.")]
    [InlineData("ramp = # none", "2:6: 'ramp' has no value after its =.")]
    [InlineData("ramp = \"1 mm", "2:8: The quote that opens here is never closed.")]
    [InlineData("ramp = '1 mm", "2:8: The quote that opens here is never closed.")]
    [InlineData("ramp = \"\"\"1 mm\n\nb = 2", "2:8: The quote that opens here is never closed.")]
    [InlineData("ramp = \"abc\\", "2:8: The quote that opens here is never closed.")]
    [InlineData(
        "ramp = \"1\\q\"",
        "2:10: The text of 'ramp' has a backslash that means nothing; write \\\\ for one backslash, or use single quotes."
    )]
    [InlineData(
        "ramp = \"\\uD800\"",
        "2:9: The text of 'ramp' has a backslash that means nothing; write \\\\ for one backslash, or use single quotes."
    )]
    [InlineData(
        "ramp = \"1\" mm",
        "2:12: After the value of 'ramp' stands something more: 'mm'. One key goes on each line."
    )]
    [InlineData(
        "ramp = \"😀\" mm",
        "2:12: After the value of 'ramp' stands something more: 'mm'. One key goes on each line."
    )]
    [InlineData(
        "ramp = 1 width_nut = 5",
        "2:10: After the value of 'ramp' stands something more: 'width_nut = 5'. One key goes on each line."
    )]
    [InlineData(
        "ramp = 01",
        "2:8: '01' is no number that 'ramp' can take. Numbers are written 12 or 0.5."
    )]
    [InlineData(
        "ramp = .5",
        "2:8: '.5' is no number that 'ramp' can take. Numbers are written 12 or 0.5."
    )]
    [InlineData(
        "ramp = 99999999999999999999",
        "2:8: '99999999999999999999' is no number that 'ramp' can take. Numbers are written 12 or 0.5."
    )]
    [InlineData(
        "ramp = [1, 2\nwidth_nut = 50",
        "2:8: The [ that opens here is never closed: a ] is missing."
    )]
    [InlineData(
        "ramp = { a = 1\nwidth_nut = 50",
        "2:8: The { that opens here is never closed: a } is missing."
    )]
    [InlineData(
        "ramp = [1 2]",
        "2:11: The list or group of 'ramp' can't be read from here: '2]'. Its parts are parted by commas."
    )]
    [InlineData(
        "caída = 1",
        "2:1: 'caída' can't be a key: keys are made of a to z, digits, - and _."
    )]
    [InlineData(
        "the ramp = 1",
        "2:1: 'the ramp' can't be a key: keys are made of a to z, digits, - and _."
    )]
    [InlineData("= 1", "2:1: '' can't be a key: keys are made of a to z, digits, - and _.")]
    [InlineData("ramp = 1\u0000", "2:9: Here stands a character that is no text (U+0000).")]
    [InlineData("ramp = \"\u001b[31m\"", "2:9: Here stands a character that is no text (U+001B).")]
    [InlineData(
        "ramp = 1\rwidth_nut = 50",
        "2:9: Here stands a line end that is not read (CR alone). Save the file with LF or CR LF line ends."
    )]
    public void Each_slip_is_named_in_our_words(string line, string expected) =>
        Assert.Equal([expected], Reading.FaultsAfterWhole($"[neck]\n{line}"));

    [Theory]
    [InlineData("[neck", "1:1: This heading is never closed: a ] is missing.")]
    [InlineData(
        "[neck] ramp = 1",
        "1:8: A heading is a name in brackets, alone on its line: [outline], or [[harmonic_bars]] for each of several."
    )]
    [InlineData(
        "[[[neck]]]",
        "1:3: A heading is a name in brackets, alone on its line: [outline], or [[harmonic_bars]] for each of several."
    )]
    public void A_faulty_heading_hides_its_own_keys_only(string heading, string expected) =>
        Assert.Equal(
            [expected, "4:10: 'dome.height' is 99 mm, but can only be 0 to 20 mm."],
            Reading.FaultsAfterWhole($"{heading}\nbogus = 1\n[dome]\nheight = 99\n")
        );

    [Fact]
    public void Faults_of_syntax_and_of_values_come_out_together()
    {
        string[] faults = Reading.FaultsAfterWhole(
            "[neck]\nramp = 1,5\nwidth_nut = 5\n[dome]\nheight = x\nkind = 1\n"
        );
        Assert.Equal(
            ["2:8", "3:13", "5:10", "6:8"],
            faults.Select(f => f[..f.IndexOf(": ", StringComparison.Ordinal)])
        );
    }

    [Theory]
    [InlineData(40, false)]
    [InlineData(65, true)]
    [InlineData(100_000, true)]
    public void Deep_nesting_is_a_diagnostic(int depth, bool tooDeep)
    {
        string text = $"[neck]\nramp = {new string('[', depth)}1{new string(']', depth)}\n";
        string fault = Assert.Single(Reading.FaultsAfterWhole(text));
        Assert.Equal(tooDeep, fault.Contains("Too many brackets", StringComparison.Ordinal));
    }

    [Fact]
    public void Groups_over_several_lines_survive_a_fault_elsewhere()
    {
        const string text =
            "[mould]\nrebate = {\n  width = 8,\n  depth = 2.5\n}\nlayers = [\n  18, # measured\n  18,\n]\n[neck]\nramp = x\n";
        Assert.StartsWith(
            "11:8: A text goes in quotes",
            Assert.Single(Reading.FaultsAfterWhole(text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void After_a_hundred_faults_of_syntax_reading_ends()
    {
        string[] faults = Reading.Faults(string.Concat(Enumerable.Repeat("x\n", 5000)));
        Assert.Equal(101, faults.Length);
        Assert.Equal("100:1: There are more than 100 faults; the rest are not shown.", faults[^1]);
    }

    [Fact]
    public void Spanish_is_spoken_too()
    {
        using IDisposable spanish = Formwright.Words.Language.Use("es");
        Assert.Equal(
            ["2:8: 'neck.ramp' vale 99,5 mm, pero solo puede ir de -5 a 15 mm."],
            Reading.FaultsAfterWhole("[neck]\nramp = 99.5\n")
        );
    }
}
