using Formwright.Design.Sections;
using Formwright.Instrument.Action;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class MeasuredTests
{
    private static readonly Func<double, double, double> Dome = (_, _) => 2.4;

    [Fact]
    public void What_is_measured_replaces_what_was_computed()
    {
        NeckAndAction found = Of(
            "ramp = 1.3\ndome_free = 2.6\nfingerboard_nut = 6.4\nfret_height = 0.95\n"
        );
        ChainFigures f = found.Model.Figures;
        Assert.Equal(1.3, f.RampMm);
        Assert.Equal(2.6, f.DomeFreeMm);
        Assert.Equal(2.6, found.Free.DomeMm);
        Assert.Equal(6.4, f.FingerboardNutMm);
        Assert.Equal(0.95, f.FretHeightMm);
        Assert.Equal(
            ["ramp", "fingerboard_nut", "fret_height", "dome_free"],
            found.Measured.Select(row => row.Key)
        );
        Assert.Equal(-0.2, found.Measured[0].DifferenceMm, 1e-12);
        Assert.Equal(0.05, found.Tolerances[ChainInput.Ramp].Spread);
        Assert.Equal(0.05, found.Tolerances[ChainInput.DomeFree].Spread);
        Assert.True(found.ActionBass.CombinedUncertainty < Of("").ActionBass.CombinedUncertainty);
        Assert.DoesNotContain(
            found.StillOpen,
            each => each.Unknown is Unknown.Ramp or Unknown.Dome
        );
        Assert.Contains(found.StillOpen, each => each.Unknown == Unknown.Saddle);
    }

    [Fact]
    public void What_is_measured_can_not_be_solved_for_any_more()
    {
        NeckAndAction found = Of("ramp = 1.3\n");
        SolveAnswer ramp = found.Solver.For(Unknown.Ramp);
        Assert.False(ramp.IsPossible);
        Assert.Contains("[measured]", ramp.Reason, StringComparison.Ordinal);
        Assert.True(found.Solver.For(Unknown.Fingerboard).IsPossible);
        Assert.False(Of("projection = 3\n").Solver.For(Unknown.FingerboardSides).IsPossible);
    }

    [Fact]
    public void A_dome_that_came_out_on_the_board_moves_the_later_ones()
    {
        NeckAndAction found = Of("dome_board = 2.1\n");
        Assert.Equal(2.1, found.OnBoard.DomeMm, 1e-12);
        Assert.Equal(2.1, found.Free.DomeMm, 1e-12);
        Assert.Equal(Of("").Strung.DomeMm - 0.3, found.Strung.DomeMm, 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("dome_free = 2.55\n")]
    [InlineData("neck_free = 1.7\n")]
    public void A_measured_projection_comes_out_and_settles_all_that_goes_into_it(string more)
    {
        NeckAndAction found = Of("projection = 2.8\n" + more);
        Assert.Equal(2.8, found.Free.ProjectionMm, 1e-9);
        Assert.Equal(0, found.Tolerances[ChainInput.Ramp].Spread);
        Assert.Equal(0, found.Tolerances[ChainInput.FingerboardJoin].Spread);
        Assert.Equal(0.05, found.Tolerances[ChainInput.DomeFree].Spread);
        if (more.StartsWith("dome", StringComparison.Ordinal))
        {
            Assert.Equal(2.55, found.Free.DomeMm, 1e-12);
        }

        // Unloaded, the saddle follows from projection, action and nut alone: s = P + 2a - cn for a join at 12.
        ChainModel bare = found.Model;
        HeightChain free = bare.Needed(BuildStage.Free);
        Assert.Equal(2.8 + 8 - 0.6, free.Bass.SaddleMm, 1e-9);
    }

    [Fact]
    public void A_measured_rise_of_the_nut_comes_out()
    {
        NeckAndAction found = Of("nut_rise = 0.9\n");
        Assert.Equal(0.9, found.Strung.NutRiseMm, 1e-9);
        Assert.Equal(0, found.Tolerances[ChainInput.NeckModulus].Spread);
    }

    [Fact]
    public void A_measured_action_comes_out_and_says_how_much_saddle_to_take_off()
    {
        NeckAndAction found = Of(
            "saddle_bass = 10\nsaddle_treble = 9\naction_bass = 4.5\naction_treble = 3.6\n"
        );
        Assert.True(found.Strung.SaddleGiven);
        Assert.Equal(4.5, found.Strung.Bass.Action12Mm, 1e-9);
        Assert.Equal(3.6, found.Strung.Treble.Action12Mm, 1e-9);
        Assert.Equal(10, found.Strung.Bass.SaddleMm, 1e-9);

        // Half a mm of action is a mm of saddle, but for compensation and the neck's answer.
        Assert.Equal(9, found.Needed.Bass.SaddleMm, 0.02);
        Assert.Equal(8.2, found.Needed.Treble.SaddleMm, 0.02);
        Assert.Equal(
            [Unknown.Saddle, Unknown.Action],
            found.StillOpen.Select(each => each.Unknown)
        );
        Assert.Contains(found.Findings, each => each.Code == "action.outside-band");
    }

    [Fact]
    public void A_measurement_far_from_the_computed_height_is_a_finding_and_a_near_one_is_not()
    {
        Assert.Contains(Of("ramp = 2.4\n").Findings, each => each.Code == "action.measured-off");
        Assert.DoesNotContain(
            Of("ramp = 1.6\n").Findings,
            each => each.Code == "action.measured-off"
        );
    }

    [Fact]
    public void Measuring_what_was_computed_changes_nothing_but_the_tolerance()
    {
        NeckAndAction plain = Of("");
        string same = FormattableString.Invariant(
            $"ramp = 1.5\nneck_free = 1.5\nfingerboard_nut = 6.5\nfingerboard_join = 6.5\nfret_height = 1\ndome_board = 2.4\ndome_free = 2.4\ndome_strung = {plain.Strung.DomeMm}\nprojection = {plain.Free.ProjectionMm}\nnut_rise = {plain.Strung.NutRiseMm}\nsaddle_bass = {plain.Strung.Bass.SaddleMm}\nsaddle_treble = {plain.Strung.Treble.SaddleMm}\naction_bass = 4\naction_treble = 3.2\n"
        );
        NeckAndAction found = Of(same);
        Assert.All(found.Measured, row => Assert.Equal(0, row.DifferenceMm, 2e-5));
        Assert.Equal(15 - 1, found.Measured.Count);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(plain.Needed.Strings[i].SaddleMm, found.Needed.Strings[i].SaddleMm, 1e-3);
        }
    }

    private static NeckAndAction Of(string measured) =>
        NeckAndAction.Of(
            Designs.Read(
                "[neck]\nramp = 1.5\n[saddle]\ncompensation = \"none\"\n[measured]\n" + measured
            ),
            Dome,
            2000
        );
}
