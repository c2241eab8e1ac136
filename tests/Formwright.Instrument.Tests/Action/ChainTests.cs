using CsCheck;
using Formwright.Design;
using Formwright.Instrument.Action;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class ChainTests
{
    private const string Bare = "[saddle]\ncompensation = \"none\"\n";

    private const string Even = "[fingerboard]\nthickness_nut = 6\nthickness_join = 6\n";

    private static readonly Func<double, double, double> Level = (_, _) => 2.4;

    // s = 2 a12 + tf + f - g - cn - d for a join at 12, even fingerboard, no compensation, no bow.
    [Fact]
    public void The_linear_relation_is_exact_for_a_join_at_12() =>
        Gen.Select(
                Gen.Double[-1, 5],
                Gen.Double[3, 9],
                Gen.Double[0.5, 1.5],
                Gen.Double[0, 5],
                Gen.Double[2, 5],
                Gen.Double[0.2, 1],
                Gen.Double[500, 700]
            )
            .Holds(
                (g, tf, f, d, a, cn, scale) =>
                {
                    ChainModel model = ActionSetup
                        .Of(Designs.Read(Bare, scale: Math.Round(scale, 1)), (_, _) => d)
                        .Model;
                    model = model with
                    {
                        Figures = model.Figures with
                        {
                            RampMm = g,
                            FingerboardNutMm = tf,
                            FingerboardJoinMm = tf,
                            FretHeightMm = f,
                            ActionBassMm = a,
                            ActionTrebleMm = a,
                            NutBassMm = cn,
                            NutTrebleMm = cn,
                            DomeBoardMm = d,
                        },
                    };
                    double expected = (2 * a) + tf + f - g - cn - d;
                    HeightChain chain = model.At(BuildStage.OnBoard);
                    return chain.Strings.All(each =>
                        Math.Abs(each.SaddleMm - expected) < 1e-10
                        && Math.Abs(each.Action12Mm - a) < 1e-10
                    );
                }
            );

    [Fact]
    public void A_mm_of_dome_or_ramp_is_a_mm_of_saddle_and_half_a_mm_of_action() =>
        Gen.Select(Gen.Double[0, 4], Gen.Double[5, 7], Gen.Double[-1, 1])
            .Holds(
                (g, tf, step) =>
                {
                    ChainModel model = ActionSetup.Of(Designs.Read(Bare), Level).Model;
                    ChainModel one = With(model, f => f with { RampMm = g, FingerboardNutMm = tf });
                    ChainModel ramp = With(one, f => f with { RampMm = g + step });
                    ChainModel dome = With(one, f => f with { DomeBoardMm = f.DomeBoardMm + step });
                    double saddle = one.At(BuildStage.OnBoard).SaddleMm;
                    ChainModel held = Hold(one, saddle);
                    return Math.Abs(ramp.At(BuildStage.OnBoard).SaddleMm - (saddle - step)) < 1e-10
                        && Math.Abs(dome.At(BuildStage.OnBoard).SaddleMm - (saddle - step)) < 1e-10
                        && Math.Abs(
                            Hold(ramp, saddle).At(BuildStage.OnBoard).Action12Mm
                                - held.At(BuildStage.OnBoard).Action12Mm
                                - (step / 2)
                        ) < 1e-10
                        && Math.Abs(
                            Hold(dome, saddle).At(BuildStage.OnBoard).Action12Mm
                                - held.At(BuildStage.OnBoard).Action12Mm
                                - (step / 2)
                        ) < 1e-10;
                }
            );

    // Even 6 mm and g = 1.5: 5.50 over the body at fret 19 (the design's own example).
    [Fact]
    public void The_fingerboard_runs_straight_on_over_the_body_or_follows_the_kink()
    {
        const string even =
            "[neck]\nramp = 1.5\n[fingerboard]\nfret_height = 0\nthickness_nut = 6\nthickness_join = 6\n";
        HeightChain straight = Chain(even, BuildStage.OnBoard);
        Assert.Equal(5.50, straight.Bass.FretMm[19], 0.005);
        Assert.Equal(7.5, straight.Bass.FretMm[0], 1e-12);
        HeightChain kinked = Chain(even + "follows_kink = true\n", BuildStage.OnBoard);
        Assert.Equal(6, kinked.Bass.FretMm[19], 1e-12);
        Assert.Equal(straight.Bass.FretMm[5], kinked.Bass.FretMm[5], 1e-12);
    }

    [Fact]
    public void The_projection_is_the_fret_plane_carried_to_the_saddle()
    {
        // Flat school, even board: the plane runs level at tf + f, the soundboard stands at 2.4.
        HeightChain flat = Chain("[neck]\nramp = 0\n" + Even + Bare, BuildStage.Free);
        Assert.Equal(6 + 1 - 2.4, flat.ProjectionMm, 1e-12);

        // With a ramp of 1.5 and a join at 12 it falls by another 1.5 from join to saddle.
        HeightChain ramp = Chain("[neck]\nramp = 1.5\n" + Even + Bare, BuildStage.Free);
        Assert.Equal(6 + 1 - 1.5 - 2.4, ramp.ProjectionMm, 1e-12);
        Assert.Equal(ramp.ProjectionMm + (2 * 4) - 0.6, ramp.Bass.SaddleMm, 1e-9);
    }

    [Theory]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(10)]
    [InlineData(14)]
    public void The_wanted_action_comes_out_at_any_join_loaded_or_not(int join)
    {
        InstrumentDesign design = Designs.Read("[neck]\nramp = 1.2\n", $"join_fret = {join}\n");
        ChainModel model = ActionSetup.Of(design, Level).Model;
        foreach (BuildStage stage in Enum.GetValues<BuildStage>())
        {
            HeightChain chain = model.At(stage);
            Assert.True(chain.Converged);
            Assert.Equal(4, chain.Bass.Action12Mm, 1e-9);
            Assert.Equal(3.2, chain.Treble.Action12Mm, 1e-9);
            Assert.Equal(0.6, chain.Bass.ActionMm[0], 2e-2);

            // The same saddle given back gives the same action.
            HeightChain given = Hold(model, chain.Bass.SaddleMm, chain.Treble.SaddleMm).At(stage);
            Assert.True(given.SaddleGiven);

            // Strung, the saddle between the outermost strings is a straight line here and not there: a hair more or less load.
            double within = stage == BuildStage.Strung ? 2e-5 : 1e-9;
            Assert.Equal(4, given.Bass.Action12Mm, within);
            Assert.Equal(3.2, given.Treble.Action12Mm, within);
        }
    }

    [Fact]
    public void The_heights_of_a_string_are_one_straight_line_and_its_gaps_those_of_a_brute_search()
    {
        HeightChain chain = Chain("[neck]\nramp = 1.5\n", BuildStage.Strung, out ChainModel model);
        IReadOnlyList<double> x = model.Geometry.FretsMm;
        foreach (StringHeights each in chain.Strings)
        {
            int i = chain.Strings.ToList().IndexOf(each);
            double nutX = model.Geometry.NutMm[i];
            double saddleX = model.Geometry.SaddleMm[i];
            for (int k = 0; k < x.Count; k++)
            {
                double z =
                    each.NutMm
                    + ((each.SaddleTopMm - each.NutMm) * (x[k] - nutX) / (saddleX - nutX));
                Assert.Equal(z, each.FretMm[k] + each.ActionMm[k], 1e-12);
            }

            for (int k = 1; k < x.Count - 1; k++)
            {
                double least = Enumerable
                    .Range(k + 1, x.Count - k - 1)
                    .Min(j =>
                        each.FretMm[k]
                        + ((each.SaddleTopMm - each.FretMm[k]) * (x[j] - x[k]) / (saddleX - x[k]))
                        - each.FretMm[j]
                    );
                Assert.Equal(least, each.GapMm[k], 1e-12);
                Assert.InRange(each.GapFret[k], k + 1, x.Count - 1);
            }

            Assert.Equal(each.SaddleTopMm - each.DomeMm, each.SaddleMm, 1e-12);
        }
    }

    [Fact]
    public void A_left_handed_instrument_swaps_the_strings_and_not_the_wood()
    {
        // A dome that slopes across and a fingerboard thinner on the treble edge of the frame.
        Func<double, double, double> aslant = (_, y) => 2.4 + (0.01 * y);
        const string tilted =
            Bare + "[fingerboard]\nthickness_nut_treble = 5.5\nthickness_join_treble = 5.5\n";
        HeightChain right = ActionSetup
            .Of(Designs.Read(tilted), aslant)
            .Model.At(BuildStage.OnBoard);
        HeightChain left = ActionSetup
            .Of(Designs.Read(tilted, "hand = \"left\"\n"), aslant)
            .Model.At(BuildStage.OnBoard);
        Assert.Equal(2.4 - 0.29, right.Bass.DomeMm, 1e-9);
        Assert.Equal(2.4 + 0.29, left.Bass.DomeMm, 1e-9);
        Assert.True(right.Bass.FretMm[0] > right.Treble.FretMm[0]);
        Assert.True(left.Bass.FretMm[0] < left.Treble.FretMm[0]);
        Assert.Equal(right.Bass.FretMm[0], left.Treble.FretMm[0], 1e-9);
        Assert.Equal(6, left.Bass.Number);
    }

    [Fact]
    public void The_break_angle_turns_from_the_strings_line_down_to_the_tie_hole()
    {
        HeightChain chain = Chain(
            "[neck]\nramp = 0\n[saddle]\ncompensation = \"none\"\ntie_behind = 10\ntie_height = 0\nheight_bass = 10\nheight_treble = 10\n",
            BuildStage.OnBoard
        );
        StringHeights bass = chain.Bass;
        double slope = (bass.SaddleTopMm - bass.NutMm) / 650;
        Assert.Equal((Math.PI / 4) + Math.Atan(slope), bass.BreakAngleRad, 1e-12);
    }

    [Fact]
    public void Unknown_numbers_are_a_callers_mistake()
    {
        Assert.Throws<ArgumentNullException>(() => ActionSetup.Of(null!, Level));
        Assert.Throws<ArgumentNullException>(() => ActionSetup.Of(Designs.Read(""), null!));
    }

    private static HeightChain Chain(string sections, BuildStage stage) =>
        Chain(sections, stage, out _);

    private static HeightChain Chain(string sections, BuildStage stage, out ChainModel model)
    {
        // Flat over the upper bout, as a dome that starts at the soundhole is.
        Func<double, double, double> dome = (x, _) => x > 460 ? 2.4 : 0;
        model = ActionSetup.Of(Designs.Read(sections), dome).Model;
        return model.At(stage);
    }

    private static ChainModel With(ChainModel model, Func<ChainFigures, ChainFigures> change) =>
        model with
        {
            Figures = change(model.Figures),
        };

    private static ChainModel Hold(ChainModel model, double saddle) => Hold(model, saddle, saddle);

    private static ChainModel Hold(ChainModel model, double bass, double treble) =>
        With(model, f => f with { SaddleBassMm = bass, SaddleTrebleMm = treble });
}
