using Formwright.Design;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>Designs whose every figure is admitted but which no one would build. What fuzzing found stands here: it must end in findings.</summary>
public sealed class OddDesignTests
{
    [Theory]
    [InlineData("fingerboard.thickness_nut", "20")]
    [InlineData("fingerboard.thickness_join", "20")]
    [InlineData("measured.fingerboard_nut", "20")]
    [InlineData("measured.fingerboard_join", "20")]
    [InlineData("soundhole.radius", "200")]
    [InlineData("saddle.slot_bottom", "20")]
    [InlineData("instrument.join_fret", "16")]
    public void An_odd_design_ends_in_findings(string key, string value)
    {
        string text = DesignEdit.Set(DesignModels.TextOf("heron"), key, value);
        DesignReading reading = DesignText.Parse(text, "f");
        Assert.Empty(reading.Diagnostics);
        Study study = Study.Of(reading.Design!);
        Assert.All(
            study.Findings,
            finding =>
                Assert.DoesNotContain(
                    "NaN",
                    finding.Message + finding.Cure,
                    StringComparison.Ordinal
                )
        );
    }
}
