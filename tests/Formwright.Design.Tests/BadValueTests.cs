using Xunit;

namespace Formwright.Design.Tests;

public sealed class BadValueTests
{
    [Theory]
    [InlineData(
        "[neck]\nramp = \"18 parsecs\"\n",
        "2:8: \"18 parsecs\" has a unit that is not known here. 'neck.ramp' takes mm, cm, m, in, ft."
    )]
    [InlineData(
        "[neck]\nramp = \"much\"\n",
        "2:8: \"much\" is no length for 'neck.ramp'. Write a number in mm such as 12.5, or a text with its unit (mm, cm, m, in, ft) such as \"1/2 in\"."
    )]
    [InlineData(
        "[neck]\nramp = true\n",
        "2:8: 'neck.ramp' takes a length: a number in mm such as 12.5, or a text with its unit such as \"1/2 in\"."
    )]
    [InlineData(
        "[neck]\nramp = [1]\n",
        "2:8: 'neck.ramp' takes a length: a number in mm such as 12.5, or a text with its unit such as \"1/2 in\"."
    )]
    [InlineData(
        "[neck]\nramp = { x = 1 }\n",
        "2:1: 'neck.ramp' takes one value, not a group of keys."
    )]
    [InlineData(
        "[neck]\nramp = nan\n",
        "2:8: 'neck.ramp' takes an ordinary number; this one has no size."
    )]
    [InlineData(
        "[neck]\nramp = -inf\n",
        "2:8: 'neck.ramp' takes an ordinary number; this one has no size."
    )]
    [InlineData(
        "[neck]\nramp = 1e999\n",
        "2:8: 'neck.ramp' takes an ordinary number; this one has no size."
    )]
    [InlineData(
        "[neck]\nramp = 1e308\n",
        "2:8: 'neck.ramp' is far outside what it can be: -5 to 15 mm."
    )]
    [InlineData(
        "[neck]\nramp = -9223372036854775808\n",
        "2:8: 'neck.ramp' is far outside what it can be: -5 to 15 mm."
    )]
    [InlineData(
        "[neck]\nwidth_nut = -52\n",
        "2:13: 'neck.width_nut' is -52 mm, but can only be 20 to 120 mm."
    )]
    [InlineData(
        "[neck]\nwidth_nut = \"-2 in\"\n",
        "2:13: 'neck.width_nut' is -50.8 mm, but can only be 20 to 120 mm."
    )]
    [InlineData("[dome]\nfullness = \"1\"\n", "2:12: 'dome.fullness' takes a plain number.")]
    [InlineData("[dome]\nfullness = 3\n", "2:12: 'dome.fullness' is 3, but can only be 1 to 2.")]
    [InlineData(
        "[mould.fasteners]\nbolts = 2.5\n",
        "2:9: 'mould.fasteners.bolts' takes a whole number."
    )]
    [InlineData(
        "[mould]\nlayers = []\n",
        "2:10: 'mould.layers' takes a list such as [18, 18, 18], with 1 to 64 values."
    )]
    [InlineData(
        "[mould]\nlayers = 18\n",
        "2:10: 'mould.layers' takes a list such as [18, 18, 18], with 1 to 64 values."
    )]
    [InlineData(
        "[mould]\nlayers = [18, \"x\", 18]\n",
        "2:15: \"x\" is no length for 'mould.layers'. Write a number in mm such as 12.5, or a text with its unit (mm, cm, m, in, ft) such as \"1/2 in\"."
    )]
    [InlineData(
        "[sheets]\nlanguage = \"fr\"\n",
        "2:12: 'sheets.language' takes one of \"en\", \"es\"."
    )]
    [InlineData("[sheets]\nlanguage = 5\n", "2:12: 'sheets.language' takes one of \"en\", \"es\".")]
    [InlineData(
        "[workboard]\nrelief = \"carvd\"\n",
        "2:10: 'workboard.relief' takes one of \"carved\", \"cork-overlay\", \"plywood-overlay\". Did you mean \"carved\"?"
    )]
    [InlineData(
        "mould = 5\n",
        "1:1: 'mould' is a group of keys: write it as [mould] or as mould = { … }."
    )]
    [InlineData(
        "harmonic_bars = 5\n",
        "1:1: 'harmonic_bars' is a list of groups, at most 200: write each under [[harmonic_bars]]."
    )]
    [InlineData(
        "[harmonic_bars]\nat = 88\n",
        "1:2: 'harmonic_bars' is a list of groups, at most 200: write each under [[harmonic_bars]]."
    )]
    [InlineData("[[harmonic_bars]]\nwidth = 6\n", "1:3: 'harmonic_bars.at' must be given.")]
    public void A_value_that_cannot_be_says_what_was_expected(string text, string expected)
    {
        // Root keys can't follow a heading.
        string[] faults =
            text.Contains("\n[", StringComparison.Ordinal) || text[0] == '['
                ? Reading.FaultsAfterWhole(text)
                : Reading.Faults(text + Reading.Whole);
        Assert.Equal([expected], faults);
    }

    [Theory]
    [InlineData(
        "body_length = 488",
        "body_lenght = 488",
        "4:1: 'outline.body_lenght' is no key of a design. Did you mean 'body_length'?"
    )]
    [InlineData(
        "[soundhole]",
        "[sound_hole]",
        "8:2: 'sound_hole' is no key of a design. Did you mean 'soundhole'?"
    )]
    [InlineData(
        "[soundhole]",
        "[soundhole]\nbody_length = 1",
        "9:1: 'soundhole.body_length' is no key of a design; the key of that name stands elsewhere: outline.body_length."
    )]
    [InlineData(
        "[soundhole]",
        "[soundhole]\ncolour = 1",
        "9:1: 'soundhole.colour' is no key of a design. Here one can write: at, radius."
    )]
    [InlineData(
        "[soundhole]\nat = 148\nradius = 42\n",
        "",
        "1:1: The group [soundhole] is missing. It must give: at, radius."
    )]
    [InlineData(
        "waist = { at = 190, width = 236 }\n",
        "",
        "3:2: The group [outline.waist] is missing. It must give: at, width."
    )]
    [InlineData("at = 190, ", "", "6:9: 'outline.waist.at' must be given.")]
    [InlineData(
        "waist = { at = 190, width = 236 }",
        "waist = 190",
        "6:1: 'waist' is a group of keys: write it as [outline.waist] or as waist = { … }."
    )]
    public void One_fault_gives_one_diagnostic(string old, string with, string expected)
    {
        Assert.Contains(old, Reading.Whole, StringComparison.Ordinal);
        string text = Reading.Whole.Replace(old, with, StringComparison.Ordinal);
        Assert.Equal([expected], Reading.Faults(text));
    }

    [Fact]
    public void A_key_in_the_wrong_group_is_told_where_it_belongs() =>
        Assert.Equal(
            [
                "11:1: 'soundhole.lining_height' is no key of a design; the key of that name stands elsewhere: ribs.lining_height.",
            ],
            Reading.Faults(Reading.Whole + "lining_height = 1\n")
        );

    [Fact]
    public void An_empty_file_misses_three_groups()
    {
        string[] faults = Reading.Faults("");
        Assert.Equal(3, faults.Length);
        Assert.Contains(
            "1:1: The group [outline] is missing. It must give: body_length, upper_bout.at, upper_bout.width, waist.at, waist.width, lower_bout.at, lower_bout.width.",
            faults
        );
    }

    [Theory]
    [InlineData(
        "[saddle]\nleast = 13\n",
        "2:1: 'saddle.least' (13) must not be larger than 'saddle.most' (12)."
    )]
    [InlineData(
        "[saddle]\nmost = 7.5\n",
        "2:1: 'saddle.least' (8) must not be larger than 'saddle.most' (7.5)."
    )]
    [InlineData(
        "[load]\ntension_least = 500\n",
        "2:1: 'load.tension_least' (500) must not be larger than 'load.tension_most' (450)."
    )]
    [InlineData(
        "[saddle]\nleast = nan\n",
        "2:9: 'saddle.least' takes an ordinary number; this one has no size."
    )]
    public void Limits_stand_the_right_way_round(string text, string expected) =>
        Assert.Equal([expected], Reading.FaultsAfterWhole(text));

    [Fact]
    public void A_list_of_bars_may_be_empty() =>
        Assert.Empty(Reading.Faults("harmonic_bars = []\n" + Reading.Whole));

    [Fact]
    public void Too_many_faults_are_cut_short()
    {
        string many = string.Concat(Enumerable.Range(0, 5000).Select(i => $"k{i} = {i}\n"));
        DesignReading reading = DesignText.Parse(many, "f");
        Assert.Equal(DesignText.MaxDiagnostics + 1, reading.Diagnostics.Count);
        Assert.Equal(
            "There are more than 200 faults; the rest are not shown.",
            reading.Diagnostics[^1].Message
        );
    }

    [Fact]
    public void A_message_never_carries_what_steers_a_terminal()
    {
        string text = $"\"\\u001b[31m{new string('k', 5000)}\" = \"\\u001b[2J\"\n";
        string fault = Assert.Single(Reading.Faults(text + Reading.Whole));
        // As long as the fault of a short key, but for some of the key; not its 5000 letters.
        string plain = Assert.Single(Reading.Faults("zzzzzz = 1\n" + Reading.Whole));
        Assert.InRange(fault.Length, plain.Length, plain.Length + 100);
        Assert.DoesNotContain(fault, char.IsControl);
    }

    [Fact]
    public void Words_of_a_choice_may_be_written_large() =>
        Assert.Equal(
            Sections.PaperSize.A3,
            DesignText.Parse(Reading.Whole + "[sheets]\npaper = \"A3\"\n", "f").Design!.Sheets.Paper
        );

    [Fact]
    public void Places_of_keys_are_known()
    {
        DesignReading reading = DesignText.Parse(Reading.Whole, "f");
        Assert.Equal(new(6, 21), reading.PlaceOf("outline.waist.width"));
        Assert.Equal(new(3, 2), reading.PlaceOf("outline.tail_flat"));
        Assert.Null(reading.PlaceOf("mould.rebate.depth"));
    }
}
