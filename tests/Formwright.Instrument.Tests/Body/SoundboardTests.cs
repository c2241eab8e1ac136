using Formwright.Curves;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class SoundboardTests
{
    [Theory]
    [InlineData("fan-five", 5, 0)]
    [InlineData("fan-seven", 7, 2)]
    [InlineData("skewed-seven", 7, 1)]
    [InlineData("none", 0, 0)]
    public void LayoutsHaveTheirBraces(string layout, int fans, int closings)
    {
        foreach (string name in new[] { "heron", "dunlin", "plover" })
        {
            BodyPlan plan = Demo.Plan(name, $"[bracing]\nlayout = \"{layout}\"");
            Assert.Equal(fans, plan.Soundboard.Braces.Count(b => b.Kind == BraceKind.Fan));
            Assert.Equal(
                closings,
                plan.Soundboard.Braces.Count(b => b.Kind == BraceKind.ClosingBar)
            );
            Assert.Equal(2, plan.Soundboard.Braces.Count(b => b.Kind == BraceKind.HarmonicBar));
            // No layout to start from breaks a rule that stops the work.
            Assert.DoesNotContain(plan.Findings, f => f.Severity == Findings.Severity.Stop);
        }
    }

    [Theory]
    [InlineData("fan-five")]
    [InlineData("fan-seven")]
    [InlineData("lattice")]
    public void SymmetricLayoutsAreSymmetric(string layout)
    {
        BodyPlan plan = Demo.Plan(more: $"[bracing]\nlayout = \"{layout}\"");
        foreach (Brace brace in plan.Soundboard.Braces)
        {
            Point mirrored = new(brace.Line[0].X, -brace.Line[0].Y);
            Assert.Contains(
                plan.Soundboard.Braces,
                other =>
                    other.Line.Any(at => at.DistanceTo(mirrored) < 1e-3)
                    && Math.Abs(other.LengthMm - brace.LengthMm) < 1e-3
                    && Math.Abs(other.Gauge.MostMm - brace.Gauge.MostMm) < 1e-3
            );
        }
    }

    [Fact]
    public void FansEndAtTheirGapFromTheLinings()
    {
        BodyPlan plan = Demo.Plan();
        // 2 mm rib, 6 mm lining, 12 mm gap.
        foreach (Brace brace in plan.Soundboard.Braces.Where(b => b.Kind == BraceKind.Fan))
        {
            Point end = brace.Line[^1];
            double distance = plan
                .Guitar.Outline.Half.Nearest(new Point(end.X, Math.Abs(end.Y)))
                .DistanceMm;
            Assert.Equal(20, distance, 1e-4);
        }
    }

    // The gauge is the dome sampled along the line, over its chord.
    [Fact]
    public void GaugesAreTheDome()
    {
        BodyPlan plan = Demo.Plan();
        Brace brace = plan.Soundboard.Braces.First(b => b.Kind == BraceKind.Fan);
        Point from = brace.Line[0];
        Point to = brace.Line[1];
        double a = plan.Guitar.Dome.Field.HeightAt(from);
        double b = plan.Guitar.Dome.Field.HeightAt(to);
        foreach (GaugePoint at in brace.Gauge.Points)
        {
            double share = at.AlongMm / brace.LengthMm;
            double expected =
                plan.Guitar.Dome.Field.HeightAt(from.Towards(to, share)) - a - (share * (b - a));
            Assert.Equal(expected, at.RiseMm, 1e-9);
        }

        Assert.True(brace.Gauge.MostMm > 0.5);
        Assert.Equal(brace.Shape.HeightMm + brace.Gauge.MostMm, brace.BlankHeightMm, 1e-9);
    }

    [Fact]
    public void OwnBracesAreMirroredAndBent()
    {
        BodyPlan plan = Demo.Plan(
            more: """
            [bracing]
            layout = "none"
            [[braces]]
            name = "K"
            at = [220, 300, 380]
            y = [20, 60, 70]
            mirrored = true
            """
        );
        Brace[] own = [.. plan.Soundboard.Braces.Where(b => b.Kind == BraceKind.Own)];
        Assert.Equal(2, own.Length);
        Assert.Equal(own[0].LengthMm, own[1].LengthMm, 1e-9);
        double length =
            new Point(220, 20).DistanceTo(new(300, 60))
            + new Point(300, 60).DistanceTo(new(380, 70));
        Assert.Equal(length, own[0].LengthMm, 1e-9);
        Assert.Equal(own[0].Gauge.MostMm, own[1].Gauge.MostMm, 1e-3);
    }

    [Fact]
    public void LatticeBracesKnowTheirLaps()
    {
        BodyPlan plan = Demo.Plan(more: "[bracing]\nlayout = \"lattice\"");
        Brace[] lattice = [.. plan.Soundboard.Braces.Where(b => b.Kind == BraceKind.Fan)];
        Assert.InRange(lattice.Length, 8, 30);
        foreach (Brace brace in lattice)
        {
            foreach (BraceLap lap in brace.Laps)
            {
                Brace other = lattice.Single(b => b.Name == lap.Other);
                Assert.Contains(other.Laps, back => back.Other == brace.Name);
                Assert.Equal(0, BraceLines.Distance(other.Line, lap.Place), 1e-9);
            }
        }

        Assert.Contains(lattice, brace => brace.Laps.Count >= 3);
    }

    [Theory]
    [InlineData("[[braces]]\nat=[150, 300]\ny=[0, 50]", "body.brace-through-soundhole")]
    [InlineData("[[braces]]\nat=[250, 480]\ny=[0, 150]", "body.brace-outside")]
    [InlineData("[[braces]]\nat=[195, 300]\ny=[70, 80]", "body.brace-through-bar")]
    [InlineData("[[braces]]\nat=[300, 380]\ny=[94, 95]", "body.brace-at-bridge-end")]
    [InlineData("[[harmonic_bars]]\nat=340", "body.bar-under-bridge")]
    [InlineData("[ribs]\nthickness = 4", "body.rib-strain")]
    [InlineData("[ribs]\nlining=\"solid\"\nlining_width = 8", "body.lining-strain")]
    [InlineData("[ribs]\nkerf = 0.2", "body.kerfs-close")]
    [InlineData("[ribs]\nkerf_web = 7", "body.kerf-through")]
    [InlineData("[ribs]\nlining_height = 45", "body.rib-too-low")]
    [InlineData("[rosette]\nrings=[{inner=50, outer=60, depth=3}]", "body.rosette-too-deep")]
    [InlineData("[rosette]\nrings=[{inner=30, outer=60}]", "body.rosette-at-hole")]
    [InlineData("[rosette]\nrings=[{inner=50, outer=130}]", "body.rosette-outside")]
    [InlineData("[[back.bars]]\nat = 600", "body.back-bar-outside")]
    [InlineData("[[back.bars]]\nat = 300\nheight = 55", "body.back-bar-too-high")]
    [InlineData("[bridge]\nlength = 370", "body.bridge-outside")]
    [InlineData("[saddle]\nahead = 11", "body.saddle-slot-near-front")]
    [InlineData("[saddle]\nslot_bottom = 1", "body.saddle-slot-too-deep")]
    [InlineData("[bridge]\nmiddle = 60", "body.bridge-middle-too-short")]
    [InlineData("[saddle]\ntie_height = 2", "body.tie-hole-low")]
    [InlineData("[heel]\nslot_depth = 28", "body.heel-thin-between-slots")]
    [InlineData("[heel]\nslot_depth = 33", "body.heel-slot-past-centre")]
    [InlineData("[heel]\nwedge_thin = 5", "body.wedge-upside-down")]
    [InlineData("[heel]\nmethod=\"dowels\"\ndowels = 8", "body.dowel-edge")]
    [InlineData("[heel]\nmethod=\"dowels\"\ndowel_length = 90", "body.dowel-too-long")]
    [InlineData("[head]\nlength = 140", "body.head-too-short")]
    [InlineData("[head]\nwidth_nut = 50", "body.head-too-narrow")]
    [InlineData("[head]\npost_below_face = 7", "body.post-out-of-wood")]
    [InlineData("[climate]\nshop_humidity = 70", "wood.glued-too-damp")]
    [InlineData("[climate]\ndry_humidity = 20", "wood.moisture-out-of-range")]
    [InlineData("[wood.soundboard]\nspecies = \"european-spruce\"", "wood.from-memory")]
    [InlineData("[board_test]\nlength=550\nwidth=200\nthickness=4\nmass=90", "wood.odd-density")]
    [InlineData(
        "[board_test]\nlength=550\nwidth=200\nthickness=10\nbend_span=400\nbend_load=5000\nbend_deflection=0.5",
        "wood.short-span"
    )]
    public void RulesFindWhatTheyName(string more, string code)
    {
        BodyPlan plan = Demo.Plan(more: more);
        Assert.Contains(plan.Findings, finding => finding.Code == code);
        Assert.DoesNotContain(Demo.Plan().Findings, finding => finding.Code == code);
        foreach (Findings.Finding finding in plan.Findings)
        {
            Assert.NotEqual("", finding.Message);
            Assert.DoesNotContain("{", finding.Message + finding.Cure, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void EveryRuleHasItsTexts()
    {
        foreach (
            Findings.Rule rule in Findings.RuleBook.Of(
                typeof(BodyRules),
                typeof(Instrument.Wood.WoodRules)
            )
        )
        {
            foreach (string text in new[] { "title", "message", "cure", "source" })
            {
                Assert.True(InstrumentWords.Of.Has($"{rule.Code}.{text}"), $"{rule.Code}.{text}");
            }
        }
    }
}
