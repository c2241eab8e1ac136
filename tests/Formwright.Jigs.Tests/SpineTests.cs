using Formwright.Design;
using Formwright.Instrument;
using Formwright.Instrument.Wood;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Spine;
using Formwright.Testing;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class SpineTests
{
    private static readonly Guitar Heron = Examples.Guitar("heron");

    [Fact]
    public void A_bare_board_warps_by_its_closed_form()
    {
        // κ = α ΔM / t, Δdrop = κ x_join (x_join + body_length)/2; APA: 0.0002 per 10 % relative humidity.
        SpinePlan plan = Of(("spine.layers", "0"), ("spine.top_change", "10"));
        double kappa = 0.0002 / Heron.Design.Workboard.ThicknessMm;
        Assert.Equal(kappa * 325 * (325 + 488) / 2, plan.WarpMm, 1e-9);
        Assert.Equal(plan.BareWarpMm, plan.WarpMm, 1e-12);
    }

    [Fact]
    public void A_wetter_top_adds_drop_and_a_wetter_underside_takes_it_away()
    {
        Assert.True(Of(("spine.top_change", "5")).WarpMm > 0);
        Assert.True(Of(("spine.top_change", "0"), ("spine.bottom_change", "5")).WarpMm < 0);
        // Plywood on plywood in the same air stays straight; a maple spine, which swells less along its grain, holds the underside back.
        Assert.Equal(0, Of(("spine.top_change", "5"), ("spine.bottom_change", "5")).WarpMm, 1e-9);
        Assert.True(
            Of(
                ("spine.top_change", "5"),
                ("spine.bottom_change", "5"),
                ("spine.material", "\"sugar-maple\"")
            ).WarpMm > 0
        );
    }

    [Theory]
    [InlineData(110, 18, 6000, 80, 48, 6000)]
    [InlineData(110, 18, 6000, 80, 48, 12_000)]
    [InlineData(400, 25, 8000, 48, 80, 13_860)]
    public void Stiffness_is_the_transformed_section(
        double b1,
        double t1,
        double e1,
        double b2,
        double t2,
        double e2
    )
    {
        // Parallel-axis theorem for two rectangles: Σ E I + (EA1 EA2/(EA1 + EA2)) d², d the distance of their middles.
        double ea1 = e1 * b1 * t1;
        double ea2 = e2 * b2 * t2;
        double d = (t1 + t2) / 2;
        double expected =
            (ea1 * t1 * t1 / 12) + (ea2 * t2 * t2 / 12) + (ea1 * ea2 / (ea1 + ea2) * d * d);
        BoardSection section = BoardSection.Of(
            new BoardSection.Strip(b1, t1, e1, 0, 0),
            new BoardSection.Strip(b2, t2, e2, 0, 0)
        );
        Assert.Equal(expected, section.StiffnessNmm2, 1e-9 * expected);
        Assert.Equal(0, section.CurvaturePerMm, 1e-18);
    }

    [Theory]
    [InlineData(18, 18, 1, 1)]
    [InlineData(18, 48, 1, 1)]
    [InlineData(10, 30, 0.5, 2)]
    public void Equal_widths_bend_as_the_strip_of_Timoshenko(
        double upper,
        double lower,
        double upperGPa,
        double lowerGPa
    )
    {
        // Timoshenko (1925), eq. 4: κ = 6 Δε (1 + m)² / (h [3 (1 + m)² + (1 + mn)(m² + 1/(mn))]), m = t1/t2, n = E1/E2.
        const double Strain = 3e-4;
        double m = lower / upper;
        double n = lowerGPa / upperGPa;
        double h = upper + lower;
        double expected =
            6
            * Strain
            * (1 + m)
            * (1 + m)
            / (h * ((3 * (1 + m) * (1 + m)) + ((1 + (m * n)) * ((m * m) + (1 / (m * n))))));
        BoardSection section = BoardSection.Of(
            new BoardSection.Strip(100, upper, 1000 * upperGPa, Strain, Strain),
            new BoardSection.Strip(100, lower, 1000 * lowerGPa, 0, 0)
        );
        Assert.Equal(expected, section.CurvaturePerMm, 1e-12 * Math.Abs(expected) + 1e-18);
    }

    [Fact]
    public void A_strain_that_runs_through_the_board_is_the_limit_of_many_even_layers()
    {
        const double Top = 2e-4;
        const double Bottom = 5e-5;
        const double Spine = 3e-5;
        Layer[] layers =
        [
            new(80, 48, 9000, Spine),
            .. Enumerable
                .Range(0, 2000)
                .Select(i => new Layer(
                    350,
                    18 / 2000.0,
                    6000,
                    Bottom + ((Top - Bottom) * (i + 0.5) / 2000)
                )),
        ];
        LayeredStrip reference = LayeredStrip.Of(layers);
        BoardSection section = BoardSection.Of(
            new BoardSection.Strip(350, 18, 6000, Top, Bottom),
            new BoardSection.Strip(80, 48, 9000, Spine, Spine)
        );
        Assert.Equal(
            reference.BendingStiffnessNmm2,
            section.StiffnessNmm2,
            1e-6 * section.StiffnessNmm2
        );
        Assert.Equal(
            reference.CurvaturePerMm,
            section.CurvaturePerMm,
            1e-6 * section.CurvaturePerMm
        );
    }

    [Fact]
    public void Sag_between_the_feet_is_that_of_a_simple_beam_at_most()
    {
        // F L³/(48 E I) with the stiffness of the neck part all along; the body is wider, so the true sag is less, but more than half of it.
        SpinePlan plan = Of(("spine.load", "1000"));
        double span = plan.Feet.TailMiddleMm - plan.Feet.NeckMiddleMm;
        double even = 1000 * Math.Pow(span, 3) / (48 * plan.NeckStiffnessNmm2);
        Assert.InRange(plan.SagMm, even / 2, even);
        // As narrow as can be all along, it is the even beam itself but for the steps.
        SpinePlan straight = Of(
            ("spine.load", "1000"),
            ("neck_width", "300"),
            ("margin", "5"),
            ("spine.layers", "0")
        );
        span = straight.Feet.TailMiddleMm - straight.Feet.NeckMiddleMm;
        even = 1000 * Math.Pow(span, 3) / (48 * straight.NeckStiffnessNmm2);
        Assert.Equal(even, straight.SagMm, 0.12 * even);
    }

    [Fact]
    public void The_fewest_layers_hold_the_ramp_and_one_less_does_not()
    {
        SpinePlan plan = Of(("spine.top_change", "10"));
        int least = plan.LeastLayers!.Value;
        Assert.InRange(least, 3, 12);
        foreach (LayersWarp row in plan.ByLayers)
        {
            SpinePlan built = Of(
                ("spine.top_change", "10"),
                ("spine.layers", FormattableString.Invariant($"{row.Layers}"))
            );
            // Depth of the spine does not move its end here, so the table is what each build would do.
            Assert.Equal(built.WarpMm, row.WarpMm, 1e-12);
            Assert.Equal(row.Layers >= least, built.WarpMm <= 0.2);
        }
    }

    [Fact]
    public void Four_layers_of_12_mm_hold_five_per_cent_between_the_faces()
    {
        SpinePlan plan = Of();
        Assert.InRange(plan.WarpMm, 0.1, 0.2);
        Assert.Empty(plan.Findings);
        // The clamp passes: throat beyond margin and block, room for the jaw.
        Assert.True(plan.Feet.RoomMm >= 60);
        Assert.True(plan.Feet.ReachMm <= 120);
        Assert.True(plan.Feet.HeightMm >= 20);
    }

    [Fact]
    public void On_edge_each_layer_makes_it_wider_and_the_depth_stays()
    {
        SpinePlan plan = Of(("spine.lie", "\"on-edge\""), ("spine.width", "60"));
        Assert.Equal(60, plan.DepthMm);
        Assert.Equal(48, plan.WidthMm);
        // Nine layers of 12 mm are 108 mm wide, ten no longer fit under a neck part of 110.
        Assert.Equal(9, plan.ByLayers[^1].Layers);
    }

    [Fact]
    public void No_bolt_lies_over_a_foot_or_the_spine()
    {
        foreach (string model in Examples.Models)
        {
            Guitar guitar = Examples.Guitar(model);
            Jigs.Tooling tooling = Jigs.Tooling.Of(guitar);
            SpinePlan plan = tooling.Spine;
            foreach (Fastener bolt in tooling.Mould.Fasteners)
            {
                double x = bolt.Centre.X;
                double y = Math.Abs(bolt.Centre.Y);
                Assert.False(x < plan.Feet.SpineEndMm && y < plan.WidthMm / 2);
                Assert.False(
                    x > plan.Feet.TailMm - plan.Feet.LengthMm
                        && x < plan.Feet.TailMm
                        && y < plan.Feet.WidthMm / 2
                );
            }
        }
    }

    [Fact]
    public void A_foot_moves_out_of_the_way_of_a_bolt()
    {
        SpinePlan plan = Of(("feet.width", "420"), ("feet.clamp_throat", "100"));
        Assert.True(plan.Feet.TailMm < plan.Feet.SpineEndMm);
    }

    [Theory]
    [InlineData("spine.top_change", "20", "spine.warps")]
    [InlineData("spine.load", "2000", "spine.sags")]
    [InlineData("feet.clamp_throat", "50", "spine.throat-too-short")]
    [InlineData("spine.width", "150", "spine.wider-than-neck")]
    [InlineData("spine.width", "105", "spine.covers-bolt")]
    [InlineData("feet.length", "300", "spine.no-place-for-feet")]
    public void A_broken_rule_is_found(string key, string value, string code)
    {
        (string, string)[] edits =
            code == "spine.no-place-for-feet"
                ? [(key, value), ("feet.clamp_throat", "400")]
                : [(key, value)];
        Findings.Finding finding = Of(edits).Findings.First(each => each.Code == code);
        Assert.Contains(DesignText.Keys(), spec => spec.Path == finding.Field);
        Assert.DoesNotContain(
            "{",
            finding.Message + finding.Cure + finding.Source,
            StringComparison.Ordinal
        );
    }

    private static SpinePlan Of(params (string Key, string Value)[] edits)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        foreach ((string key, string value) in edits)
        {
            text = DesignEdit.Set(text, $"workboard.{key}", value);
        }

        DesignReading reading = DesignText.Parse(text, "heron.toml");
        Assert.Empty(reading.Diagnostics);
        // Nothing that these keys change touches outline or dome.
        Guitar guitar = Heron with
        {
            Design = reading.Design!,
        };
        return SpinePlan.Of(guitar, MouldMaker.Of(guitar));
    }
}
