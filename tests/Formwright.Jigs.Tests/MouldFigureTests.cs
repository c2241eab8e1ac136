using Formwright.Curves;
using Formwright.Design;
using Formwright.Instrument;
using Formwright.Jigs.Mould;
using Formwright.Jigs.MouldFits;
using Formwright.Jigs.Parts;
using Formwright.Testing;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class MouldFigureTests
{
    // EN 315:2000 as makers of plywood print it: 18 mm +0.74/-0.94, 12 mm +0.56/-0.76.
    [Theory]
    [InlineData(18, 17.06, 18.74)]
    [InlineData(12, 11.24, 12.56)]
    public void Sheets_may_be_as_thin_and_thick_as_en_315_says(
        double nominal,
        double least,
        double most
    )
    {
        Assert.Equal(least, SheetThickness.LeastMm(nominal), 1e-9);
        Assert.Equal(most, SheetThickness.MostMm(nominal), 1e-9);
    }

    // ISO 4762 heads: M6 10×6, M8 13×8. ISO 273 medium: M5 5.5, M6 6.6, M8 9.
    [Theory]
    [InlineData(6, 10, 6, 6.6)]
    [InlineData(8, 13, 8, 9)]
    public void Heads_and_holes_are_those_of_the_standards(
        double bolt,
        double diameter,
        double height,
        double hole
    )
    {
        Assert.Equal((diameter, height), BoltTable.HeadMm(bolt));
        Assert.Equal(hole, BoltHoles.ClearanceMm(bolt));
    }

    [Theory]
    [InlineData(76, 84, 80.0)]
    [InlineData(80, 80, 80.0)]
    [InlineData(71, 79, null)]
    [InlineData(300, 320, null)]
    public void The_shortest_length_in_trade_that_fits_is_taken(
        double least,
        double most,
        double? expected
    ) => Assert.Equal(expected, BoltTable.LengthMm(least, most));

    [Fact]
    public void A_bolt_holds_in_its_nut_and_stays_under_the_top()
    {
        Guitar guitar = Examples.Guitar("heron");
        MouldPlan plan = MouldMaker.Of(guitar);
        double board = guitar.Design.Workboard.ThicknessMm;
        // Three layers of 18 mm, heads let in by 4, nuts of 12 mm flush with the top, M8 held over 8 mm.
        Assert.Equal(board - 4 + 54 - 12 + 8, plan.Bolt!.LeastMm, 1e-9);
        Assert.Equal(board - 4 + 54, plan.Bolt.MostMm, 1e-9);
        Assert.Equal(80, plan.Bolt.LengthMm);

        // Sold as 18 mm they may be 3 × 17.06 to 3 × 18.74, which is more than the nut takes up.
        Assert.Equal(3 * 17.06, plan.StackMm.LeastMm, 1e-9);
        Assert.Equal(3 * 18.74, plan.StackMm.MostMm, 1e-9);
        Assert.False(plan.Bolt.FitsAnySheet);
        MouldPlan measured = MouldMaker.Of(With("mould.layers_measured", "true"));
        Assert.Equal((54, 54), measured.StackMm);
        Assert.True(measured.Bolt!.FitsAnySheet);
    }

    // Dowels 200 apart with 0.1 play, a place on their line 100 beyond: sideways 0.05 (1 + 2·100/200) = 0.1.
    [Theory]
    [InlineData(0, 0.05)]
    [InlineData(100, 0.05)]
    [InlineData(200, 0.05)]
    [InlineData(300, 0.1)]
    [InlineData(-200, 0.15)]
    public void Play_moves_a_place_on_the_line_of_the_dowels_as_the_lever_says(
        double along,
        double moved
    )
    {
        DowelPlay play = DowelPlay.Of(
            new Point(0, 0),
            new Point(200, 0),
            0.1,
            [new Point(along, 0)]
        );
        Assert.Equal(moved, play.FarEndMm, 1e-6);
        Assert.Equal(0.1 / 200, play.TurnRad, 1e-15);
    }

    [Fact]
    public void No_move_that_the_dowels_allow_is_larger_than_the_one_reported()
    {
        MouldPlan plan = MouldMaker.Of(Examples.Guitar("heron"));
        DowelPlay play = plan.Play!;
        Fastener[] dowels =
        [
            .. plan.Fasteners.Where(each => each.Kind == HoleKind.Dowel && each.Centre.Y > 0),
        ];
        Point a = dowels[0].Centre;
        Point b = dowels[^1].Centre;
        double radius = play.ClearanceMm / 2;
        Random random = new(7);
        double most = 0;
        for (int i = 0; i < 200_000; i++)
        {
            // A small turn about the first dowel's moved place that leaves the second within its hole.
            Vector first =
                Vector.At(random.NextDouble() * 2 * Math.PI)
                * (radius * Math.Sqrt(random.NextDouble()));
            double turn = ((random.NextDouble() * 2) - 1) * play.TurnRad;
            Vector second = first + ((b - a).Left * turn);
            if (second.Length <= radius)
            {
                most = Math.Max(most, (first + ((play.FarEnd - a).Left * turn)).Length);
            }
        }

        Assert.InRange(most, 0.97 * play.FarEndMm, play.FarEndMm * (1 + 1e-4));
    }

    [Theory]
    [InlineData("heron")]
    [InlineData("plover")]
    public void The_tightest_hollow_of_the_inner_face_is_the_outlines_tightest_bout(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        MouldCutting cutting = MouldMaker.Of(guitar).Cutting!;
        double least = double.PositiveInfinity;
        Chain half = guitar.Outline.Half;
        for (double s = 0; s <= half.LengthMm; s += 0.1)
        {
            CurvePoint at = half.At(s);
            double cut =
                at.Position.X < guitar.Outline.BodyLengthMm / 2
                    ? guitar.Design.Mould.HeelCutMm
                    : guitar.Design.Mould.TailCutMm;
            if (at.Curvature < 0 && at.Position.Y >= cut)
            {
                least = Math.Min(least, at.RadiusMm);
            }
        }

        Assert.Equal(least, cutting.TightestHollowMm, 0.05);
    }

    [Theory]
    [InlineData("mould.cutter_diameter", "80", "mould.cutter-too-large", true)]
    [InlineData("mould.fasteners.head_recess", "7", "mould.no-bolt-fits", false)]
    [InlineData("mould.fasteners.dowel_clearance", "0.6", "mould.far-end-moves", false)]
    [InlineData("mould.joints", "[250, 255]", "mould.joints-in-line", false)]
    public void A_broken_rule_is_found_and_a_sound_mould_is_quiet(
        string key,
        string value,
        string code,
        bool narrow
    )
    {
        // Narrow: a small instrument with an upper bout that closes tightly.
        Guitar broken = narrow
            ? With(key, value, ("outline.upper_bout.radius", "30"))
            : With(key, value);
        Assert.Contains(MouldMaker.Of(broken).Findings, each => each.Code == code);
        Assert.DoesNotContain(
            MouldMaker.Of(Examples.Guitar("heron")).Findings,
            each => each.Code == code
        );
    }

    [Fact]
    public void A_hole_on_a_joint_is_found_and_the_joint_is_marked()
    {
        Guitar heron = Examples.Guitar("heron");
        Fastener bolt = MouldMaker
            .Of(heron)
            .Fasteners.First(each => each.Kind == HoleKind.Bolt && each.Centre.Y > 0);
        double station = bolt.Centre.X - heron.JoinMm;
        MouldPlan joined = MouldMaker.Of(
            With("mould.joints", FormattableString.Invariant($"[{station + 3:0.0}, 0]"))
        );
        Assert.Contains(joined.Findings, each => each.Code == "mould.hole-on-joint");
        Assert.Contains(
            joined.Parts.Single(part => part.Id == "mould-bottom-bass").Marks,
            mark => mark.Key == "mark.joint"
        );
        Assert.DoesNotContain(
            joined.Parts.Single(part => part.Id == "mould-middle-bass").Marks,
            mark => mark.Key == "mark.joint"
        );
    }

    [Fact]
    public void A_mould_of_one_layer_takes_nuts_of_their_own_depth()
    {
        MouldPlan plan = MouldMaker.Of(With("mould.layers", "[40]"));
        Assert.Equal(2, plan.Parts.Count);
        Hole[] nuts = [.. plan.Parts[1].Holes.Where(hole => hole.Kind == HoleKind.CaptiveNut)];
        Assert.Equal(3, nuts.Length);
        Assert.All(nuts, nut => Assert.Equal(12, nut.DepthMm));
        Assert.Equal(3, plan.Parts[1].Holes.Count(hole => hole.Kind == HoleKind.Bolt));
    }

    [Fact]
    public void A_mould_fits_its_own_design()
    {
        Guitar heron = Examples.Guitar("heron");
        MouldFit fit = MouldFit.Of(heron, heron);
        Assert.Equal(MouldVerdict.Fits, fit.Verdict);
        Assert.Equal(0, fit.ShiftMm, 1e-3);
        Assert.True(fit.ProudMm < 0.01 && fit.OffMm < 0.01);
        Assert.Equal(MouldMaker.Of(heron).Fasteners[0].Centre.X, fit.Fasteners[0].Centre.X, 1e-3);
    }

    [Fact]
    public void A_mould_a_little_wider_is_lined_and_one_of_another_size_is_not_taken()
    {
        Guitar heron = Examples.Guitar("heron");
        Guitar wide = With("outline.lower_bout.width", "371");
        MouldFit lined = MouldFit.Of(heron, wide);
        Assert.Equal(MouldVerdict.FitsWithChanges, lined.Verdict);
        Assert.Contains(lined.Changes, change => change.Key == "line");
        // Half of the 3 mm, square to a face that is parallel to the centreline there; sliding can't do better than that.
        Assert.InRange(lined.OffMm, 1.0, 1.6);
        Assert.Contains(lined.Stretches, stretch => !stretch.IsProud);

        MouldFit small = MouldFit.Of(heron, Examples.Guitar("plover"));
        Assert.Equal(MouldVerdict.DoesNotFit, small.Verdict);
        Assert.Contains(small.Changes, change => !change.IsPossible);
        Assert.All(
            small.Changes,
            change => Assert.DoesNotContain("{", change.Text, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_thin_soundboard_asks_for_a_planed_foot()
    {
        Guitar thin = With("soundboard.edge_thickness", "2");
        MouldFit fit = MouldFit.Of(thin, Examples.Guitar("heron"));
        Assert.Equal(MouldVerdict.FitsWithChanges, fit.Verdict);
        MouldChange change = Assert.Single(fit.Changes);
        Assert.Equal("plane-foot", change.Key);
        Assert.Equal(0.5, change.AmountMm, 1e-9);
    }

    private static Guitar With(string key, string value, params (string Key, string Value)[] more)
    {
        string text = DesignEdit.Set(
            File.ReadAllText(Repository.PathOf("examples", "heron.toml")),
            key,
            value
        );
        foreach ((string other, string given) in more)
        {
            text = DesignEdit.Set(text, other, given);
        }

        DesignReading reading = DesignText.Parse(text, "heron.toml");
        Assert.Empty(reading.Diagnostics);
        return Examples.Build(reading.Design!);
    }
}
