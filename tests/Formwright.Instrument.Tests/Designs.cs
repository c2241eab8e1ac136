using Formwright.Design;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests;

/// <summary>Designs for the tests: the outline of the demo model Heron with whatever a test changes.</summary>
internal static class Designs
{
    private const string Body =
        "[outline]\nbody_length = 488\nupper_bout = { at = 104, width = 282 }\nwaist = { at = 190, width = 236 }\n"
        + "lower_bout = { at = 356, width = 368 }\n[soundhole]\nat = 148\nradius = 42\n";

    /// <summary>A design of scale 650 with the given sections and further keys of <c>[instrument]</c>.</summary>
    public static InstrumentDesign Read(string sections, string instrument = "", double scale = 650)
    {
        string head = FormattableString.Invariant($"[instrument]\nscale = {scale}\n{instrument}");
        DesignReading reading = DesignText.Parse(head + Body + sections, "test.toml");
        Assert.Empty(reading.Diagnostics);
        return reading.Design!;
    }

    /// <summary>One of the examples.</summary>
    public static InstrumentDesign Example(string name)
    {
        DesignReading reading = DesignText.Load(Repository.PathOf("examples", $"{name}.toml"));
        Assert.Empty(reading.Diagnostics);
        return reading.Design!;
    }
}
