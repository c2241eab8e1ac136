using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

/// <summary>Features that can't be met come back with the feature and the reason, never as an exception.</summary>
public sealed class BadFeaturesTests
{
    private static readonly OutlineFeatures Heron = Models.Heron;

    public static TheoryData<string, OutlineFeatures, OutlineFeature, OutlineFault> Bad =>
        new()
        {
            {
                "waist wider than the bouts",
                Heron with
                {
                    Waist = new(190, 300),
                },
                OutlineFeature.Waist,
                OutlineFault.WaistNotNarrower
            },
            {
                "waist as wide as the upper bout",
                Heron with
                {
                    Waist = new(190, 282),
                },
                OutlineFeature.Waist,
                OutlineFault.WaistNotNarrower
            },
            {
                "waist before the upper bout",
                Heron with
                {
                    Waist = new(90, 236),
                },
                OutlineFeature.Waist,
                OutlineFault.StationOutOfOrder
            },
            {
                "lower bout before the waist",
                Heron with
                {
                    LowerBout = new(180, 368),
                },
                OutlineFeature.LowerBout,
                OutlineFault.StationOutOfOrder
            },
            {
                "lower bout beyond the tail",
                Heron with
                {
                    BodyLengthMm = 350,
                },
                OutlineFeature.LowerBout,
                OutlineFault.BeyondTail
            },
            {
                "negative width",
                Heron with
                {
                    UpperBout = new(104, -282),
                },
                OutlineFeature.UpperBout,
                OutlineFault.SizeOutOfRange
            },
            {
                "no length",
                Heron with
                {
                    BodyLengthMm = 0,
                },
                OutlineFeature.Tail,
                OutlineFault.SizeOutOfRange
            },
            {
                "not a number",
                Heron with
                {
                    LowerBout = new(double.NaN, 368),
                },
                OutlineFeature.LowerBout,
                OutlineFault.SizeOutOfRange
            },
            {
                "huge",
                Heron with
                {
                    BodyLengthMm = 1e308,
                },
                OutlineFeature.Tail,
                OutlineFault.SizeOutOfRange
            },
            {
                "radius of 0",
                Heron with
                {
                    Waist = new(190, 236, 0),
                },
                OutlineFeature.Waist,
                OutlineFault.SizeOutOfRange
            },
            {
                "flat wider than the bout",
                Heron with
                {
                    HeelFlatMm = 282,
                },
                OutlineFeature.Heel,
                OutlineFault.FlatTooWide
            },
            {
                "flat and radius",
                Heron with
                {
                    TailFlatMm = 40,
                    TailRadiusMm = 300,
                },
                OutlineFeature.Tail,
                OutlineFault.FlatAndRadius
            },
            {
                "waist too deep for the room beside the upper bout",
                Heron with
                {
                    Waist = new(130, 150),
                },
                OutlineFeature.UpperBout,
                OutlineFault.Loop
            },
        };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Name_the_feature(
        string why,
        OutlineFeatures features,
        OutlineFeature feature,
        OutlineFault fault
    )
    {
        OutlineSolution solution = MinimumVariation.Solve(features);
        Assert.Null(solution.Outline);
        Assert.True(
            solution.Problems.Any(p => p.Feature == feature && p.Fault == fault),
            $"{why}: {string.Join(", ", solution.Problems)}"
        );
    }

    [Fact]
    public void All_wrong_sizes_are_named_at_once()
    {
        OutlineSolution solution = MinimumVariation.Solve(
            new OutlineFeatures(-1, new(0, 1), new(1, double.PositiveInfinity), new(5, 5))
        );
        Assert.Equal(
            [OutlineFeature.Tail, OutlineFeature.UpperBout, OutlineFeature.Waist],
            solution.Problems.Select(problem => problem.Feature).Distinct()
        );
    }

    [Theory]
    [InlineData(OutlineFeature.UpperBout, 2)]
    [InlineData(OutlineFeature.Waist, 2)]
    [InlineData(OutlineFeature.LowerBout, 3)]
    [InlineData(OutlineFeature.Waist, 20)]
    public void A_radius_out_of_reach_is_named_with_the_radius_that_would_come(
        OutlineFeature feature,
        double radius
    )
    {
        OutlineFeatures features = feature switch
        {
            OutlineFeature.UpperBout => Heron with
            {
                UpperBout = Heron.UpperBout with { RadiusMm = radius },
            },
            OutlineFeature.Waist => Heron with { Waist = Heron.Waist with { RadiusMm = radius } },
            _ => Heron with { LowerBout = Heron.LowerBout with { RadiusMm = radius } },
        };
        OutlineSolution solution = MinimumVariation.Solve(features);
        OutlineProblem problem = Assert.Single(solution.Problems);
        Assert.Equal(feature, problem.Feature);
        Assert.Equal(OutlineFault.RadiusOutOfReach, problem.Fault);
        Assert.Equal(radius, problem.MeasuredMm, 1e-9);
        Assert.InRange(problem.LimitMm, 60, 120);
    }

    [Fact]
    public void A_hollow_heel_is_a_remark()
    {
        OutlineFeatures wide = new(333, new(56, 250), new(132, 193), new(258, 269));
        OutlineSolution solution = MinimumVariation.Solve(wide);
        Assert.NotNull(solution.Outline);
        Assert.Contains(
            solution.Remarks,
            remark => remark is { Feature: OutlineFeature.Heel, Fault: OutlineFault.HollowEnd }
        );
    }

    [Fact]
    public void Whatever_is_asked_either_comes_out_or_is_named_within_bounded_work()
    {
        Gen<double> size = Gen.Int[0, 9].SelectMany(i => i < 9 ? Gen.Double[-50, 700] : Gen.Double);
        (
            from a in size.Array[7]
            from b in size.Array[5]
            from which in Gen.Int[0, 7]
            select new OutlineFeatures(
                a[0],
                new(a[1], a[2], which == 1 ? b[0] : null),
                new(a[3], a[4], which == 2 ? b[1] : null),
                new(a[5], a[6], which == 3 ? b[2] : null)
            )
            {
                HeelFlatMm = which == 4 ? b[3] : 0,
                TailFlatMm = which == 5 ? b[4] : 0,
                HeelRadiusMm = which == 6 ? b[3] : null,
                TailRadiusMm = which == 7 ? b[4] : null,
            }
        ).Holds(
            features =>
            {
                OutlineSolution solution = MinimumVariation.Solve(features);
                Assert.Equal(solution.Outline is null, solution.Problems.Count > 0);
                Assert.True(solution.Iterations < 2000);
            },
            iter: 1000
        );
    }

    [Fact]
    public void A_tolerance_that_is_none_is_the_callers_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MinimumVariation.Solve(Heron, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MinimumVariation.Solve(Heron, double.NaN));
    }
}
