using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Action;
using Formwright.Instrument.Strings;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class NeckAndActionTests
{
    // A paraboloid under the bridge, flat over the upper bout.
    private static readonly Func<double, double, double> Dome = (x, y) =>
        Math.Max(0, 2.5 - (6e-5 * (x - 670) * (x - 670)) - (1e-4 * y * y));

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Examples_give_a_playable_instrument(string name)
    {
        InstrumentDesign design = Designs.Example(name);
        double saddle = design.Identity.ScaleMm;
        NeckAndAction found = NeckAndAction.Of(
            design,
            (x, y) => Math.Max(0, 2.5 - (6e-5 * Math.Pow(x - saddle - 20, 2)) - (1e-4 * y * y)),
            5000
        );
        Assert.DoesNotContain(found.Findings, each => each.Severity == Severity.Stop);
        Assert.InRange(found.Strung.SaddleMm, 8, 12);
        Assert.InRange(found.Strung.NutRiseMm, 0.2, 1.5);
        Assert.True(found.Strung.Converged);
        Assert.Equal(20, found.Frets.Count);
        Assert.True(found.Chance!.BestRampInRange >= found.Chance.SaddleInRange - 1e-3);
        Assert.True(found.Chance.BestSaddleInBand >= found.Chance.InBand - 1e-3);
        Assert.Equal(design.Action.BassMm, found.Strung.Bass.Action12Mm, 1e-9);
    }

    [Fact]
    public void The_chance_and_the_interval_agree_with_the_law_of_propagation()
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read("[neck]\nramp = 1.5\n"), Dome, 200_000);
        double u = found.ActionBass.CombinedUncertainty;
        double deviation = found
            .Chance!
            .Run
            .Outputs[(int)ActionOutput.ActionBass]
            .StandardDeviation;
        Assert.Equal(u, deviation, 0.02 * u);
        (double low, double high) = found.Chance.ActionBassMm;

        // Several inputs of like size: near to normal, between ±1.8 u and ±2 u.
        Assert.InRange(4 - low, 1.8 * u, 2.05 * u);
        Assert.InRange(high - 4, 1.8 * u, 2.05 * u);
        Assert.True(found.ActionBass.WorstCase > high - 4);
        Assert.True(found.Chance.SaddleBlankMm > found.Strung.Bass.SaddleMm);
    }

    [Fact]
    public void The_best_ramp_centres_the_saddle_in_its_range()
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read("[neck]\nramp = 0\n"), Dome, 50_000);
        Assert.True(found.Chance!.BestRampMm > 0.5);
        string better = FormattableString.Invariant($"[neck]\nramp = {found.Chance.BestRampMm}\n");
        NeckAndAction again = NeckAndAction.Of(Designs.Read(better), Dome, 50_000);
        Assert.Equal(found.Chance.BestRampInRange, again.Chance!.SaddleInRange, 5e-3);
        Assert.Equal(10, again.Strung.SaddleMm, 0.2);
    }

    [Fact]
    public void ALineOfTheChartEndsOnItsFrame()
    {
        ChartLine line = new(10, [(0, 4), (1, 2), (2, 0)]);
        Assert.Equal([(0.5, 3.0), (1.0, 2.0), (1.5, 1.0)], line.Within(1, 3));
        Assert.Equal(line.Points, line.Within(-1, 9));
        Assert.Empty(line.Within(5, 6));
        Assert.Equal([(0.0, 2.0), (1.0, 2.0)], new ChartLine(9, [(0, 2), (1, 2)]).Within(1, 3));
    }

    [Fact]
    public void The_chart_s_lines_are_where_the_chain_puts_the_saddle()
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read("[neck]\nramp = 1.5\n"), Dome, 0);
        Assert.Null(found.Chance);
        RampDomeChart chart = found.Chart;
        Assert.Equal(9, chart.Lines.Count);
        Assert.Equal(found.Strung.SaddleMm, chart.SaddleMm, 1e-9);
        Assert.True(chart.StraightWithinMm < 0.01);
        foreach (ChartLine line in chart.Lines)
        {
            (double dome, double ramp) = line.Points[1];
            ChainFigures f = found.Model.Figures with { DomeFreeMm = dome, RampMm = ramp };
            HeightChain chain = (found.Model with { Figures = f }).Needed(BuildStage.Strung);
            Assert.Equal(line.SaddleMm, chain.SaddleMm, 1e-7);

            // One mm of dome asks for about one mm less of ramp.
            double slope =
                (line.Points[^1].RampMm - line.Points[0].RampMm)
                / (line.Points[^1].DomeMm - line.Points[0].DomeMm);
            Assert.InRange(slope, -1.05, -0.95);
        }
    }

    [Fact]
    public void The_fret_table_thins_over_the_body_and_keeps_the_strings_off_the_edge()
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read("[neck]\nramp = 1.5\n"), Dome, 0);
        Assert.Equal(6.00, found.Frets[19].BoardMm, 0.005);
        Assert.Equal(6.5, found.Frets[7].BoardMm, 1e-12);
        Assert.Equal(52, found.Frets[0].BoardWidthMm, 1e-12);
        Assert.Equal(62, found.Frets[12].BoardWidthMm, 1e-9);
        InstrumentString bass = found.Strings.Strings[0];
        Assert.Equal(26 - 21.5 - (bass.DiameterMm / 2), found.Frets[0].EdgeBassMm, 1e-9);
        Assert.Equal(found.Frets.Sum(row => row.FromLastMm), found.Frets[^1].FromNutMm, 1e-9);
    }

    [Fact]
    public void The_bridge_carries_a_couple_and_a_pull()
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read(""), Dome, 0);
        double couple = found
            .Strings.Strings.Zip(
                found.Strung.Strings,
                (wire, heights) => wire.TensionN * (heights.SaddleMm + 1.25)
            )
            .Sum();
        Assert.Equal(found.Strings.TotalTensionN, found.Bridge.PullN, 1e-9);
        Assert.Equal(couple, found.Bridge.CoupleNmm, 1e-6);
    }

    [Fact]
    public void Planing_the_advised_bow_gives_the_bow_wanted()
    {
        NeckAndAction found = NeckAndAction.Of(
            Designs.Read("[fingerboard]\nbow_wanted = 0.35\n"),
            Dome,
            0
        );
        string planed = FormattableString.Invariant(
            $"[fingerboard]\nbow_wanted = 0.35\nbow_planed = {found.Bow.ToPlaneMm}\n"
        );
        NeckAndAction again = NeckAndAction.Of(Designs.Read(planed), Dome, 0);
        Assert.Equal(0.35, again.Strung.BowMm, 0.01);
    }

    [Theory]
    [InlineData(
        "action.saddle-too-high",
        "[neck]\nramp = 0\n[fingerboard]\nthickness_nut = 9\nthickness_join = 9\n"
    )]
    [InlineData("action.saddle-too-low", "[neck]\nramp = 5\n")]
    [InlineData(
        "action.outside-band",
        "[saddle]\nheight_bass = 12\nheight_treble = 12\n[neck]\nramp = 1.5\n"
    )]
    [InlineData("action.buzz", "[fingerboard]\nbow_planed = -2\n[action]\nbass = 1\ntreble = 1\n")]
    [InlineData("action.small-gap", "[action]\nclearance = 0.5\n")]
    [InlineData("action.break-angle-small", "[saddle]\ntie_height = 9\ntie_behind = 30\n")]
    [InlineData("action.break-angle-large", "[saddle]\ntie_height = 0\ntie_behind = 5\n")]
    [InlineData("action.string-near-edge", "[strings]\nspacing_nut = 50\n")]
    [InlineData("action.ramp-beyond-board", "[neck]\nramp = 5\n[workboard]\nthickness = 12\n")]
    [InlineData("action.ramp-below-datum", "[neck]\nramp = -0.5\n")]
    [InlineData("action.dome-beyond-board", "[dome]\nheight = 10\n[workboard]\nthickness = 12\n")]
    [InlineData("action.tension-high", "[load]\ntension_most = 300\n")]
    [InlineData("action.tension-low", "[load]\ntension_least = 500\ntension_most = 900\n")]
    [InlineData("action.kink", "[neck]\nramp = 1.5\n[fingerboard]\nfollows_kink = true\n")]
    [InlineData(
        "action.fingerboard-thin",
        "[neck]\nramp = 3\n[fingerboard]\nthickness_nut = 3.5\nthickness_join = 3.5\n"
    )]
    [InlineData("action.fret-past-end", "[fingerboard]\noverhang = 80\n")]
    [InlineData("action.bow", "[fingerboard]\nbow_wanted = 0.8\n")]
    [InlineData(
        "action.saddle-thin",
        "[saddle]\nthickness = 1\ncompensation = \"nut-and-saddle\"\n"
    )]
    [InlineData("action.intonation", "[saddle]\ncompensation = \"none\"\n")]
    [InlineData("action.poor-odds", "[tolerances]\nramp = 3\n")]
    public void Each_rule_fires_where_it_should_and_speaks_both_languages(
        string code,
        string sections
    )
    {
        NeckAndAction found = NeckAndAction.Of(Designs.Read(sections), Dome, 2000);
        Finding finding = Assert.Single(
            found.Findings,
            each => each.Code == code && each == found.Findings.First(f => f.Code == code)
        );
        Assert.NotEmpty(finding.Message);
        Assert.NotEmpty(finding.Cure);
        Assert.NotEmpty(finding.Source);
        Assert.NotEmpty(finding.Rule.Title);
        Assert.DoesNotContain("{", finding.Message + finding.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_design_breaks_no_rule()
    {
        NeckAndAction found = NeckAndAction.Of(
            Designs.Read(
                "[neck]\nramp = 1.5\n[saddle]\ncompensation = \"nut-and-saddle\"\nthickness = 5\n[tolerances]\nramp = 0.1\ndome_free = 0.1\n"
            ),
            Dome,
            2000
        );
        Assert.Empty(found.Findings.Select(each => each.Message));
    }

    [Fact]
    public void A_flat_neck_and_a_join_at_13_work_as_well()
    {
        NeckAndAction flat = NeckAndAction.Of(
            Designs.Read(
                "[neck]\nramp = 0\n[fingerboard]\nthickness_nut = 5\nthickness_join = 5\n"
            ),
            Dome,
            2000
        );
        Assert.True(flat.Strung.Converged);
        Assert.InRange(flat.Strung.SaddleMm, 8, 13);
        NeckAndAction at13 = NeckAndAction.Of(
            Designs.Read("[neck]\nramp = 1.5\n", "join_fret = 13\n"),
            Dome,
            2000
        );
        Assert.Equal(343.240848, at13.Model.Geometry.JoinMm, 1e-6);
        Assert.Equal(4, at13.Strung.Bass.Action12Mm, 1e-9);
        Assert.DoesNotContain(at13.Findings, each => each.Severity == Severity.Stop);
    }

    [Fact]
    public void The_same_design_gives_the_same_result()
    {
        NeckAndAction one = NeckAndAction.Of(Designs.Read(""), Dome, 10_000);
        NeckAndAction two = NeckAndAction.Of(Designs.Read(""), Dome, 10_000);
        Assert.Equal(one.Chance!.InBand, two.Chance!.InBand);
        Assert.Equal(one.Chance.ActionBassMm, two.Chance.ActionBassMm);
        Assert.Equal(one.Strung.Bass.SaddleMm, two.Strung.Bass.SaddleMm);
    }

    [Fact]
    public void Every_rule_and_every_input_has_its_texts()
    {
        foreach (Rule rule in RuleBook.Of(typeof(ActionRules)))
        {
            foreach (string part in new[] { "title", "message", "cure", "source" })
            {
                Assert.True(InstrumentWords.Of.Has($"{rule.Code}.{part}"), $"{rule.Code}.{part}");
            }
        }

        foreach (ChainInput input in Enum.GetValues<ChainInput>())
        {
            Assert.True(InstrumentWords.Of.Has($"chain-input.{TolerancesDesign.KeyOf(input)}"));
        }

        foreach (Unknown unknown in Enum.GetValues<Unknown>())
        {
            Assert.True(
                InstrumentWords.Of.Has(
                    $"unknown.{Formwright.Design.Reading.Choices.NameOf(unknown)}"
                )
            );
        }
    }
}
