using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Jigs.Brackets;
using Formwright.Testing;
using Xunit;

namespace Formwright.Jigs.Tests.Brackets;

/// <summary>What a bracket jig is told when a rule is broken.</summary>
public sealed class JigRuleTests
{
    [Theory]
    [InlineData("jig.bracket.notch_height", "84", "jig.notch-too-high")]
    [InlineData("jig.bracket.height", "110", "jig.bracket-over-ribs")]
    [InlineData("jig.bracket.relief_depth", "1", "jig.overhang-meets-bracket")]
    [InlineData("jig.bracket.relief_height", "1", "jig.edge-meets-bracket")]
    [InlineData("jig.bracket.washer_diameter", "30", "jig.too-little-wood")]
    [InlineData("jig.bracket.rear_face", "80", "jig.flanks-do-not-meet")]
    [InlineData("jig.bracket.front_face", "28", "jig.waist-gap")]
    [InlineData(
        "jig.slots",
        "[{ from_x = 60, from_y = 150, to_x = 60, to_y = 260 }]",
        "jig.gap-too-long"
    )]
    [InlineData(
        "jig.slots",
        "[{ from_x = 60, from_y = 190, to_x = 60, to_y = 260 }, { from_x = 70, from_y = 190, to_x = 70, to_y = 260 }]",
        "jig.slots-too-close"
    )]
    [InlineData(
        "jig.slots",
        "[{ from_x = 900, from_y = 190, to_x = 900, to_y = 260 }]",
        "jig.slot-unused"
    )]
    public void A_broken_rule_is_found_and_names_a_field_that_exists(
        string key,
        string value,
        string code
    )
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        DesignReading reading = DesignText.Parse(DesignEdit.Set(text, key, value), "heron.toml");
        Assert.Empty(reading.Diagnostics);
        JigPlan plan = JigMaker.Of(Examples.Build(reading.Design!));
        Findings.Finding finding = plan.Findings.First(each => each.Code == code);
        Assert.Contains(
            DesignText.Keys(),
            spec => spec.Path == finding.Field.Replace("[0]", "[]", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(
            "{",
            finding.Message + finding.Cure + finding.Source,
            StringComparison.Ordinal
        );
    }

    // With hardly any travel of the bolts instruments of other sizes can't share their slots.
    [Fact]
    public void A_family_that_needs_more_slots_than_its_bound_is_told_so()
    {
        JigDesign design = Examples.Design("heron").Jig;
        Instrument.Guitar[] family = [.. Examples.Models.Select(Examples.Guitar)];
        JigPlan stiff = JigMaker.Of(
            family,
            design with
            {
                Bracket = design.Bracket with { BoltToMm = design.Bracket.BoltFromMm + 0.5 },
            }
        );
        Assert.True(stiff.Slots.Count > stiff.LowerBound);
        Assert.Contains(stiff.Findings, each => each.Code == JigRules.MoreSlotsThanBound.Code);
        Assert.DoesNotContain(
            JigMaker.Of(family, design).Findings,
            each => each.Code == JigRules.MoreSlotsThanBound.Code
        );
    }
}
