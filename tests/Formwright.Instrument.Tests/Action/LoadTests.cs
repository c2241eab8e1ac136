using CsCheck;
using Formwright.Design.Sections;
using Formwright.Instrument.Action;
using Formwright.Instrument.Necks;
using Formwright.Instrument.Tolerances;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class LoadTests
{
    private static readonly Func<double, double, double> Level = (_, _) => 2.4;

    private const string Square =
        "[neck]\nshape = \"square\"\nwidth_nut = 60\nwidth_join = 60\nthickness_nut = 18\nthickness_join = 18\n"
        + "[action]\nbass = 2\ntreble = 2\nnut_bass = 2\nnut_treble = 2\n[saddle]\ncompensation = \"none\"\n"
        + "[load]\njoin_rotation = 0\ncreep = 0\n[fingerboard]\nthickness_nut = 6\nthickness_join = 6\n";

    // Strings that run level with the frets over a neck of one section are an end moment: rise M L^2 / 2EI, bow M L^2 / 8EI.
    [Fact]
    public void Level_strings_over_an_even_neck_are_an_end_moment()
    {
        ChainModel model = ActionSetup.Of(Designs.Read(Square), Level).Model;
        HeightChain chain = model.At(BuildStage.Strung);
        ChainFigures f = model.Figures;
        CompositeSection section = model.Geometry.Profile.SectionAt(
            new NeckPlace(0, 60, 18),
            6,
            f.NeckModulusMPa,
            f.FingerboardModulusMPa
        );
        double arm = 2 + 1 + 6 + section.AxisBelowFaceMm;
        double moment = model.Geometry.Strings.TotalTensionN * arm;
        double rise = moment * 325 * 325 / (2 * section.BendingStiffnessNmm2);
        Assert.Equal(rise, chain.NutRiseMm, 1e-9);
        Assert.Equal(rise, chain.BendingRiseMm, 1e-9);
        for (int k = 0; k <= 12; k++)
        {
            double x = model.Geometry.FretsMm[k];
            double bow = moment * x * (325 - x) / (2 * section.BendingStiffnessNmm2);
            Assert.Equal(bow, chain.BowAtFretMm[k], 1e-9);
        }

        Assert.Equal(rise / 4, chain.BowMm, rise * 1e-3);

        // On the board nothing bends.
        Assert.Equal(0, model.At(BuildStage.OnBoard).NutRiseMm);
        Assert.Equal(0, model.At(BuildStage.OnBoard).BowMm);
    }

    // Strings at nut height 0 over the frets: H grows linearly from 0 at the nut.
    [Fact]
    public void Rising_strings_bend_it_by_their_own_moment()
    {
        ChainModel model = ActionSetup
            .Of(
                Designs.Read(
                    Square.Replace(
                        "nut_bass = 2\nnut_treble = 2",
                        "nut_bass = 0\nnut_treble = 0",
                        StringComparison.Ordinal
                    )
                ),
                Level
            )
            .Model;
        ChainFigures f = model.Figures;
        CompositeSection section = model.Geometry.Profile.SectionAt(
            new NeckPlace(0, 60, 18),
            6,
            f.NeckModulusMPa,
            f.FingerboardModulusMPa
        );
        double total = model.Geometry.Strings.TotalTensionN;
        double even = total * (1 + 6 + section.AxisBelowFaceMm);

        // A moment m x/L on a cantilever clamped at L raises the free end by m L^2 / 3EI.
        double rise = ((even / 2) + (total * 2 / 3)) * 325 * 325 / section.BendingStiffnessNmm2;
        Assert.Equal(rise, model.At(BuildStage.Strung).NutRiseMm, 1e-9);
    }

    [Fact]
    public void Rotation_and_creep_add_to_the_rise_and_a_rotation_alone_makes_no_bow_on_the_neck()
    {
        string stiff = Square.Replace(
            "join_rotation = 0\ncreep = 0",
            "join_rotation = 0.1\ncreep = 0.5",
            StringComparison.Ordinal
        );
        ChainModel model = ActionSetup.Of(Designs.Read(stiff), Level).Model;
        HeightChain chain = model.At(BuildStage.Strung);
        double turn = 0.1 * Math.PI / 180 * 325;
        Assert.Equal((chain.BendingRiseMm + turn) * 1.5, chain.NutRiseMm, 1e-9);
        ChainModel rigid = model with
        {
            Figures = model.Figures with { NeckModulusMPa = 1e12, FingerboardModulusMPa = 1e12 },
        };
        HeightChain turned = rigid.At(BuildStage.Strung);
        Assert.Equal(turn * 1.5, turned.NutRiseMm, 1e-6);
        Assert.All(turned.BowAtFretMm, bow => Assert.Equal(0, bow, 1e-6));

        // The rise is counted once: frets past the join turn down with the body, about the join.
        double past = model.Geometry.FretsMm[19] - 325;
        double unloaded = rigid.At(BuildStage.Free).Bass.FretMm[19];
        Assert.Equal(unloaded - (0.1 * Math.PI / 180 * past * 1.5), turned.Bass.FretMm[19], 1e-6);
    }

    [Fact]
    public void A_bar_a_stiffer_wood_and_a_thicker_neck_all_lower_the_rise()
    {
        double plain = Rise("");
        Assert.True(Rise("[neck.bar]\nwidth = 6\n") < plain);
        Assert.True(Rise("[wood.neck]\nmodulus_long = 15\n") < plain);
        Assert.True(Rise("[neck]\nthickness_nut = 17\nthickness_join = 19\n") < plain);
        Assert.True(Rise("[strings]\nset = \"light\"\n") < plain);
        Assert.True(Rise("[fingerboard]\nthickness_nut = 7.5\nthickness_join = 7.5\n") < plain);
        static double Rise(string sections) =>
            ActionSetup.Of(Designs.Read(sections), Level).Model.At(BuildStage.Strung).BendingRiseMm;
    }

    [Fact]
    public void Stations_on_the_taper_change_nothing()
    {
        HeightChain taper = ActionSetup.Of(Designs.Read(""), Level).Model.At(BuildStage.Strung);
        HeightChain stations = ActionSetup
            .Of(
                Designs.Read(
                    "[[neck.stations]]\nat = 0\nwidth = 52\nthickness = 15.5\n[[neck.stations]]\nat = 162.5\nwidth = 57\nthickness = 16.5\n"
                        + "[[neck.stations]]\nat = 325\nwidth = 62\nthickness = 17.5\n"
                ),
                Level
            )
            .Model.At(BuildStage.Strung);
        Assert.Equal(taper.NutRiseMm, stations.NutRiseMm, 1e-9);
    }

    // The vectorised model is the chain: any figures, join at 12, 13 or 10, with a bar, a kink, a tilt.
    [Theory]
    [InlineData(12, "")]
    [InlineData(13, "[neck.bar]\nwidth = 6\nbelow_face = 1\n")]
    [InlineData(
        10,
        "[fingerboard]\nthickness_nut_treble = 6.1\nthickness_join_treble = 5.7\nbow_planed = 0.2\n"
    )]
    [InlineData(10, "[fingerboard]\nfollows_kink = true\n")]
    [InlineData(14, "[dome]\nstrung = 2.8\n[saddle]\nheight_bass = 9.5\nheight_treble = 9\n")]
    public void The_model_for_many_builds_is_the_chain(int join, string sections)
    {
        Func<double, double, double> dome = (x, y) => 2.4 + (1e-3 * (x - 650)) + (4e-3 * y);
        ActionSetup setup = ActionSetup.Of(Designs.Read(sections, $"join_fret = {join}\n"), dome);
        HeightChain nominal = setup.Model.At(BuildStage.Strung);
        ChainModel model = setup.Model with
        {
            Figures = setup.Model.Figures with
            {
                SaddleBassMm = nominal.Bass.SaddleMm,
                SaddleTrebleMm = nominal.Treble.SaddleMm,
            },
        };
        ActionBatch batch = new(model, setup.Tolerances);
        Gen.Double[-1, 1]
            .Array[batch.Inputs.Count]
            .Holds(
                moves =>
                {
                    double[] x =
                    [
                        .. batch.Inputs.Select(
                            (each, i) => each.Value + (2 * moves[i] * each.Spread)
                        ),
                    ];
                    double[] inputs = new double[4 * x.Length];
                    for (int i = 0; i < x.Length; i++)
                    {
                        inputs[4 * i] = x[i];
                    }

                    double[] outputs = new double[4 * batch.OutputCount];
                    batch.Evaluate(inputs, outputs, 4, 1);
                    ChainModel moved = Moved(model, nominal, x);
                    HeightChain chain = moved.At(BuildStage.Strung);
                    HeightChain needed = moved.Needed(BuildStage.Strung);
                    double At(ActionOutput output) => outputs[4 * (int)output];

                    // Five Gauss points for the whole neck against five between every two frets.
                    return Math.Abs(At(ActionOutput.ActionBass) - chain.Bass.Action12Mm) < 1e-7
                        && Math.Abs(At(ActionOutput.ActionTreble) - chain.Treble.Action12Mm) < 1e-7
                        && Math.Abs(At(ActionOutput.SaddleBass) - needed.Bass.SaddleMm) < 2e-7
                        && Math.Abs(At(ActionOutput.SaddleTreble) - needed.Treble.SaddleMm) < 2e-7;
                },
                iter: 200
            );
    }

    private static ChainModel Moved(ChainModel model, HeightChain nominal, double[] x)
    {
        ChainFigures f = model.Figures;
        double In(ChainInput input) => x[(int)input];
        return model with
        {
            Figures = f with
            {
                RampMm = In(ChainInput.Ramp),
                OffBoardMm = In(ChainInput.NeckOffBoard),
                AfterGlueingMm = In(ChainInput.NeckAfterGlueing),
                FingerboardNutMm = In(ChainInput.FingerboardNut),
                FingerboardJoinMm = In(ChainInput.FingerboardJoin),
                FretHeightMm = In(ChainInput.FretHeight),
                NutBassMm = f.NutBassMm + In(ChainInput.NutClearance),
                NutTrebleMm = f.NutTrebleMm + In(ChainInput.NutClearance),
                DomeFreeMm = In(ChainInput.DomeFree),
                DomeStrungMm = f.DomeStrungMm is null ? null : In(ChainInput.DomeStrung),
                BridgeRiseMm = In(ChainInput.BridgeRise),
                BridgeRotationRad = In(ChainInput.BridgeRotation) * Math.PI / 180,
                JoinRotationRad = In(ChainInput.JoinRotation) * Math.PI / 180,
                Creep = In(ChainInput.Creep),
                NeckModulusMPa = f.NeckModulusMPa * In(ChainInput.NeckModulus) / 100,
                FingerboardModulusMPa =
                    f.FingerboardModulusMPa * In(ChainInput.FingerboardModulus) / 100,
                NeckThickerMm = In(ChainInput.NeckThickness),
                TensionFactor = In(ChainInput.Tension) / 100,
                SaddleBassMm = nominal.Bass.SaddleMm + In(ChainInput.Saddle),
                SaddleTrebleMm = nominal.Treble.SaddleMm + In(ChainInput.Saddle),
            },
        };
    }

    [Fact]
    public void The_tolerance_of_the_action_holds_what_the_chain_says()
    {
        ActionSetup setup = ActionSetup.Of(
            Designs.Read("[saddle]\ncompensation = \"none\"\n"),
            Level
        );
        ActionBatch batch = new(setup.Model, setup.Tolerances);
        Budget budget = Propagation.Of(batch, (int)ActionOutput.ActionBass);
        double Of(ChainInput input) => budget.Contributions[(int)input].Sensitivity;

        // Half a mm of action for each mm of ramp, dome, saddle, but for what the strings' own height does to the neck.
        Assert.Equal(0.5, Of(ChainInput.Ramp), 0.01);
        Assert.Equal(0.5, Of(ChainInput.DomeFree), 0.01);
        Assert.Equal(0.5, Of(ChainInput.Saddle), 0.01);
        Assert.Equal(0, Of(ChainInput.DomeBoard), 1e-9);
        Assert.True(Of(ChainInput.NeckModulus) < 0);
        Assert.True(Of(ChainInput.Tension) > 0);
        Assert.True(Of(ChainInput.FingerboardJoin) < -0.9);
        Assert.True(budget.WorstCase > budget.CombinedUncertainty);
    }
}
