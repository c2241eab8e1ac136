using Formwright.Design.Sections;
using Xunit;

namespace Formwright.Design.Tests;

public sealed class StringsDesignTests
{
    private const string Head =
        "[instrument]\nscale = 650\n[outline]\nbody_length = 488\nupper_bout = { at = 104, width = 282 }\n"
        + "waist = { at = 190, width = 236 }\nlower_bout = { at = 356, width = 368 }\n[soundhole]\nat = 148\nradius = 42\n";

    // Open strings in Hz at A4 = 440: equal temperament (computed), ISO 16:1975 for the standard.
    [Theory]
    [InlineData("E2", 82.40688923)]
    [InlineData("A2", 110)]
    [InlineData("D3", 146.832384)]
    [InlineData("G3", 195.997718)]
    [InlineData("B3", 246.9416506)]
    [InlineData("E4", 329.6275569)]
    [InlineData("Fb4", 329.6275569)]
    [InlineData("d#4", 311.1269837)]
    public void Notes_have_their_pitch(string name, double hz)
    {
        Assert.True(NoteName.TryRead(name, out NoteName note));
        Assert.Equal(hz, note.FrequencyHz(440), 1e-6);
    }

    [Theory]
    [InlineData("H2")]
    [InlineData("E")]
    [InlineData("E9")]
    [InlineData("E#b2")]
    [InlineData(" 2")]
    public void What_is_no_note_is_refused(string name) =>
        Assert.False(NoteName.TryRead(name, out _));

    [Fact]
    public void Every_built_in_set_reads_and_carries_notes_from_bass_to_treble()
    {
        Assert.Equal(["carbon", "hard", "light", "normal"], StringSets.Names);
        foreach (string name in StringSets.Names)
        {
            IReadOnlyList<StringDesign> set = StringSets.Find(name)!;
            Assert.Equal(6, set.Count);
            Assert.Equal([40, 45, 50, 55, 59, 64], set.Select(each => each.Note!.Value.Semitone));
        }
    }

    [Fact]
    public void A_tuning_retunes_a_set_and_a_stated_tension_gives_the_mass()
    {
        StringsDesign drop = Read("[strings]\ntuning = \"D2 A2 D3 G3 B3 E4\"\n").Design!.Strings;
        Assert.Equal("D2", drop.Strings[0].Note.ToString());
        StringsDesign own = Read(
            "[[strings.string]]\nnote = \"E4\"\ntension = 79.9711\nat_pitch = 329.6276\ndiameter = 0.71\n"
                + "[[strings.string]]\nnote = \"E2\"\nunit_mass = 5.8\ndiameter = 1.1\n"
        ).Design!.Strings;
        Assert.Equal(2, own.Strings.Count);
        Assert.Equal("", own.Set);

        // T = mu (2 L f)^2 for 0.65 m: mu 0.435511 g/m (computed).
        Assert.Equal(0.435511e-3, own.Strings[0].UnitMassKgPerM, 1e-9);
    }

    [Theory]
    [InlineData("[strings]\nset = \"nromal\"\n", "normal")]
    [InlineData("[strings]\ntuning = \"E2 A2\"\n", "2")]
    [InlineData("[strings]\ntuning = \"E2 A2 D3 G3 B3 X4\"\n", "X4")]
    [InlineData("[[strings.string]]\nnote = \"E2\"\ndiameter = 1\n", "unit_mass")]
    [InlineData("[dome]\nstrung = 3\n[load]\nbridge_rise = 0.2\n", "dome.strung")]
    [InlineData("[measured]\nsaddle_bass = 9\n", "saddle_treble")]
    [InlineData("[saddle]\nheight_bass = 9\n", "height_treble")]
    [InlineData("[measured]\naction_bass = 4\naction_treble = 3\n", "saddle_bass")]
    public void Faults_say_what_to_do(string text, string expected)
    {
        DesignReading reading = Read(text);
        Assert.Null(reading.Design);
        Assert.Contains(
            reading.Diagnostics,
            each => each.Message.Contains(expected, StringComparison.Ordinal)
        );
    }

    private static DesignReading Read(string text) => DesignText.Parse(Head + text, "t.toml");
}
