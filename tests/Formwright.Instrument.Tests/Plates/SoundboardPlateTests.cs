using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields.Plates;
using Formwright.Instrument.Action;
using Formwright.Instrument.Plates;
using Xunit;

namespace Formwright.Instrument.Tests.Plates;

public sealed class SoundboardPlateTests
{
    private const string Coarse = "[plate]\nunknowns = 1000\n";

    private static Guitar Built(string sections) => Guitar.Build(Designs.Read(sections)).Guitar!;

    // The strings' couple about the middle of the board, by hand from the strung chain; the plate is linear in it.
    [Fact]
    public void The_loaded_chain_takes_the_plates_answer_at_its_own_load()
    {
        Guitar guitar = Built(Coarse);
        SoundboardPlate plate = SoundboardPlate.Of(guitar);
        NeckAndAction action = NeckAndAction.Of(guitar, 0, plate);
        BridgeMotion motion = action.BridgeMotion!;
        double couple = action
            .Strung.Strings.Zip(
                action.Strings.Strings,
                (heights, wire) => wire.TensionN * (heights.SaddleMm + 1.25)
            )
            .Sum();
        Assert.Equal(couple, motion.CoupleNmm, couple * 1e-4);
        Assert.Equal(action.Strings.TotalTensionN, motion.PullN, 1e-9);
        Assert.Equal(motion.RiseMm, action.Model.Figures.BridgeRiseMm, 1e-6);
        Assert.Equal(motion.RotationRad, action.Model.Figures.BridgeRotationRad, 1e-8);
        PlateMotion hinged = plate.Answers!.Hinged.Under(
            motion.PullN,
            (motion.CoupleNmm / motion.PullN) - 1.25,
            2.5
        );
        Assert.Equal(hinged.SlopeRad.X, motion.HingedRotationRad, 1e-12);
        Assert.InRange(motion.RotationRad, motion.ClampedRotationRad, motion.HingedRotationRad);

        // s = 2 a + ... - d: a bridge that rises by r and turns by φ under a saddle ahead of it by e takes r - φ e from the saddle.
        NeckAndAction stated = NeckAndAction.Of(
            Built(Coarse + "[load]\nbridge_rise = 0\nbridge_rotation = 0\n"),
            0,
            plate
        );
        Assert.Null(stated.BridgeMotion);
        double lower = motion.RiseMm - (motion.RotationRad * guitar.Design.Saddle.AheadMm);
        double share = action.Model.Geometry.DomeShares[2];
        Assert.Equal(
            stated.Strung.Strings[2].SaddleMm - (lower * share),
            action.Strung.Strings[2].SaddleMm,
            2e-3
        );
    }

    [Fact]
    public void Its_uncertainty_enters_the_budget_unless_the_maker_states_one()
    {
        Guitar guitar = Built(Coarse);
        NeckAndAction own = NeckAndAction.Of(guitar, 0, SoundboardPlate.Of(guitar));
        Assert.Equal(
            own.BridgeMotion!.RiseUncertaintyMm,
            own.Tolerances[ChainInput.BridgeRise].Spread,
            1e-6
        );
        Assert.Equal(
            own.BridgeMotion.RotationUncertaintyDeg,
            own.Tolerances[ChainInput.BridgeRotation].Spread,
            1e-6
        );
        Guitar told = Built(Coarse + "[tolerances]\nbridge_rotation = 0.7\n");
        NeckAndAction stated = NeckAndAction.Of(told, 0, SoundboardPlate.Of(told));
        Assert.Equal(0.7, stated.Tolerances[ChainInput.BridgeRotation].Spread);
        Assert.NotNull(stated.BridgeMotion);
    }

    // All moduli times two: half the movement, √2 the notes; the wood's share of the doubt stays.
    [Fact]
    public void Stiffer_wood_turns_less_and_rings_higher()
    {
        const string Soft =
            Coarse
            + "[wood.soundboard]\nmodulus_long = 8\nmodulus_cross = 0.6\nmodulus_shear = 0.6\n[wood.braces]\nmodulus_long = 9\nmodulus_shear = 0.5\n[wood.bridge]\nmodulus_long = 12\nmodulus_cross = 2\nmodulus_shear = 1\n";
        string stiff = Soft.Replace("= 8\n", "= 16\n", StringComparison.Ordinal)
            .Replace("= 0.6\n", "= 1.2\n", StringComparison.Ordinal)
            .Replace("= 9\n", "= 18\n", StringComparison.Ordinal)
            .Replace("= 0.5\n", "= 1\n", StringComparison.Ordinal)
            .Replace("= 12\n", "= 24\n", StringComparison.Ordinal)
            .Replace("cross = 2\n", "cross = 4\n", StringComparison.Ordinal)
            .Replace(
                "modulus_cross = 4\nmodulus_shear = 1\n",
                "modulus_cross = 4\nmodulus_shear = 2\n",
                StringComparison.Ordinal
            );
        SoundboardPlate one = SoundboardPlate.Of(Built(Soft));
        SoundboardPlate two = SoundboardPlate.Of(Built(stiff));
        BridgeMotion a = one.Under(400, 4500)!;
        BridgeMotion b = two.Under(400, 4500)!;
        Assert.Equal(a.RotationRad, 2 * b.RotationRad, 1e-9);
        Assert.Equal(a.RiseMm, 2 * b.RiseMm, 1e-8);
        for (int i = 0; i < 20; i++)
        {
            double f = one.Tones!.Modes[i].FrequencyHz;
            Assert.Equal(f * Math.Sqrt(2), two.Tones!.Modes[i].FrequencyHz, f * 1e-6);
        }

        Assert.True(one.Tones!.Converged);
        Assert.Equal(20, one.Tones.Modes.Count);
    }

    // Christensen & Vistisen, JASA 68(3) 758, 1980: sum of squares and product of the two peaks.
    [Fact]
    public void The_air_pushes_the_first_mode_and_itself_apart()
    {
        PlateTones tones = SoundboardPlate.Of(Built(Coarse)).Tones!;
        foreach (BoxTone tone in new[] { tones.Hinged, tones.Clamped })
        {
            Assert.Equal(
                (tones.AirHz * tones.AirHz) + (tone.ClosedHz * tone.ClosedHz),
                (tone.LowHz * tone.LowHz) + (tone.HighHz * tone.HighHz),
                1e-6
            );
            Assert.Equal(tones.AirHz * tone.BoardHz, tone.LowHz * tone.HighHz, 1e-6);
            Assert.True(tone.LowHz < tones.AirHz && tone.HighHz > tone.ClosedHz);
        }

        Assert.True(tones.Clamped.BoardHz > tones.Hinged.BoardHz);
        Assert.InRange(tones.VolumeL, 10, 16);
    }

    [Fact]
    public void What_did_not_change_is_taken_from_before()
    {
        SoundboardPlate first = SoundboardPlate.Of(Built(Coarse));
        PlateAnswers? answers = first.Answers;
        SoundboardPlate wound = SoundboardPlate.Of(
            Built("[plate]\nunknowns = 1000\nwood = 10\n[dome]\nheight = 3\n"),
            first
        );
        Assert.Same(answers, wound.Answers);
        Assert.True(wound.WoodShare < first.WoodShare);
        Guitar other = Built(Coarse + "[bracing]\nheight = 6\n");
        Assert.NotSame(answers, SoundboardPlate.Of(other, first).Answers);

        // While something is dragged, the answer waits; when it rests, it is made anew.
        SoundboardPlate passing = SoundboardPlate.Of(other, first, isPassing: true);
        Assert.Same(answers, passing.Answers);
        Assert.NotSame(answers, SoundboardPlate.Of(other, passing).Answers);
    }

    [Fact]
    public void A_board_that_is_no_plate_is_a_finding()
    {
        InstrumentDesign design = Designs.Read(Coarse);
        Guitar guitar = Guitar
            .Build(design with { Soundhole = new SoundholeDesign(330, 100) })
            .Guitar!;
        SoundboardPlate plate = SoundboardPlate.Of(guitar);
        NeckAndAction action = NeckAndAction.Of(guitar, 0, plate);
        Assert.Null(plate.Answers);
        Assert.Null(plate.Tones);
        Assert.Null(action.BridgeMotion);
        Assert.Equal(design.Load.BridgeRiseMm, action.Model.Figures.BridgeRiseMm);
        Assert.Equal(
            [PlateRules.NotComputed],
            PlateRules.Check(plate, action).Select(finding => finding.Rule)
        );
        // A maker who states the movement asks nothing of the plate.
        Guitar told = Guitar
            .Build(design with { Load = design.Load with { Bridge = BridgeSource.Stated } })
            .Guitar!;
        SoundboardPlate unasked = SoundboardPlate.Of(told);
        Assert.Empty(PlateRules.Check(unasked, NeckAndAction.Of(told, 0, unasked)));
    }

    [Fact]
    public void A_thin_board_lets_the_bridge_turn_too_far_and_a_usual_one_does_not()
    {
        Guitar usual = Built(Coarse);
        SoundboardPlate plate = SoundboardPlate.Of(usual);
        Assert.Empty(PlateRules.Check(plate, NeckAndAction.Of(usual, 0, plate)));
        Guitar thin = Built(
            Coarse
                + "[soundboard]\nthickness = 1.2\nedge_thickness = 1.3\n[bracing]\nheight = 1.5\n[bridge]\nheight = 5\nwing = 1\nwing_tip = 1\n"
        );
        SoundboardPlate weak = SoundboardPlate.Of(thin);
        NeckAndAction action = NeckAndAction.Of(thin, 0, weak);
        Assert.Equal(
            [PlateRules.BridgeTurns, PlateRules.EdgeThicker],
            PlateRules.Check(weak, action).Select(finding => finding.Rule)
        );
    }

    [Fact]
    public void Thickness_runs_from_the_edge_to_the_middle_over_the_band()
    {
        Guitar guitar = Built(
            "[soundboard]\nthickness = 2.6\nedge_thickness = 2.0\nedge_band = 60\n"
        );
        ThicknessMap map = new(guitar.Design.Soundboard, guitar.Outline);
        Assert.Equal(2.0, map.Over(0));
        Assert.Equal(2.3, map.Over(30), 1e-12);
        Assert.Equal(2.6, map.Over(61));
        Assert.Equal(30, map.DistanceOf(2.3)!.Value, 1e-9);
        Assert.Null(map.DistanceOf(2.7));
        Assert.Equal(2.6, map.At(new Point(300, 0)));
        // At the widest place the outline runs along the centreline: 184 from it.
        Assert.Equal(2.3, map.At(new Point(356, 184 - 30)), 5e-3);
        Assert.Equal(map.At(new Point(356, -154)), map.At(new Point(356, 154)));
        foreach (double from in new[] { 2.01, 2.1, 2.25, 2.4, 2.59 })
        {
            Assert.Equal(from, map.Over(map.DistanceOf(from)!.Value), 1e-12);
        }
    }

    // ∛(3 ∫ z² w dz) by fine sums.
    [Theory]
    [InlineData(BraceSection.Square)]
    [InlineData(BraceSection.Round)]
    [InlineData(BraceSection.Gable)]
    public void A_rounded_brace_counts_as_the_rectangle_of_its_stiffness(BraceSection section)
    {
        const int Steps = 200_000;
        double sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double z = (i + 0.5) / Steps;
            double up = Math.Max(0, (2 * z) - 1);
            double width = section switch
            {
                BraceSection.Round => Math.Sqrt(1 - (up * up)),
                BraceSection.Gable => 1 - up,
                _ => 1,
            };
            sum += z * z * width / Steps;
        }

        Assert.Equal(Math.Cbrt(3 * sum), PlateMaker.StiffHeightShare(section), 1e-6);
    }
}
