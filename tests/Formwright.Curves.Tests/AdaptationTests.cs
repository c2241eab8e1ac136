using Xunit;

namespace Formwright.Curves.Tests;

/// <summary>Adapting is checked by what it must leave alone: itself, a plain scaling, and the features that it is told to meet.</summary>
public class AdaptationTests
{
    /// <summary>An invented outline of ten pieces, much like Heron.</summary>
    private static readonly Outline Source = new CurvaturePlot(
        [79, 68, 58, 66, 40, 82, 53, 71, 144, 56],
        [
            -0.0049,
            -0.0064,
            -0.0102,
            -0.0147,
            0.0147,
            0.0095,
            -0.0041,
            -0.0094,
            -0.0088,
            -0.0038,
            -0.0030,
        ]
    )
        .Closed()!
        .ToOutline()!;

    private static readonly OutlineFeatures Own = new(
        Source.BodyLengthMm,
        Station(0),
        Station(1),
        Station(2)
    );

    [Fact]
    public void Its_own_features_leave_an_outline_as_it_was()
    {
        AdaptedOutline adapted = Adaptation.To(Source, Own);
        Assert.Empty(adapted.Problems);
        Assert.InRange(adapted.Change.LargestShare, 0, 1e-6);
        Assert.Equal(Source.HalfPerimeterMm, adapted.Outline!.HalfPerimeterMm, 6);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(1.3)]
    public void A_plain_scaling_only_scales(double factor)
    {
        AdaptedOutline adapted = Adaptation.To(Source, Scaled(Own, factor));
        Assert.InRange(adapted.Change.LargestShare, 0, 1e-6);
        Assert.Equal(factor * Source.HalfPerimeterMm, adapted.Outline!.HalfPerimeterMm, 5);
        Assert.Equal(factor * factor * Source.AreaMm2, adapted.Outline.AreaMm2, 2);
    }

    [Fact]
    public void Other_features_are_met_and_the_plot_changes_little()
    {
        OutlineFeatures wider = Own with
        {
            BodyLengthMm = Math.Round(Own.BodyLengthMm) + 4,
            UpperBout = new(104, 280),
            Waist = new(188, 240),
            LowerBout = new(360, 376),
        };
        AdaptedOutline adapted = Adaptation.To(Source, wider);
        Outline outline = Assert.IsType<Outline>(adapted.Outline);
        Assert.Equal(wider.BodyLengthMm, outline.BodyLengthMm, 6);
        Assert.Equal([104.0, 188, 360], outline.Turns.Select(turn => Math.Round(turn.UMm, 6)));
        Assert.Equal([280.0, 240, 376], outline.Turns.Select(turn => Math.Round(turn.WidthMm, 6)));
        Assert.Equal(-0.5 * Math.PI, outline.Half.End.Angle, 9);
        // Widths changed by at most 2.2 %, stations by 1.1 % of the body: the plot may change by some percent, not more.
        Assert.InRange(adapted.Change.RmsShare, 0.001, 0.1);
    }

    [Fact]
    public void A_radius_is_met_too()
    {
        OutlineFeatures rounder = Own with { LowerBout = Own.LowerBout with { RadiusMm = 112 } };
        Outline outline = Adaptation.To(Source, rounder).Outline!;
        Assert.Equal(112, 1 / outline.Turns[2].CurvaturePerMm, 6);
    }

    [Fact]
    public void There_and_back_it_nearly_returns()
    {
        OutlineFeatures other = Own with { Waist = new(Own.Waist.UMm + 2, Own.Waist.WidthMm + 8) };
        Outline there = Adaptation.To(Source, other).Outline!;
        Outline back = Adaptation.To(there, Own).Outline!;
        // The least change there and the least change back are not inverse to each other, but nearly.
        Assert.InRange(PlotChange.Between(Source, back).RmsShare, 0, 0.03);
    }

    [Fact]
    public void An_outline_without_a_waist_is_refused()
    {
        Chain round = new([new EulerSegment(new(0, 0), 0.5 * Math.PI, -0.005, 0, 200 * Math.PI)]);
        AdaptedOutline adapted = Adaptation.To(new Outline(round), Own);
        Assert.Null(adapted.Outline);
        Assert.Equal(OutlineFault.NoTurn, Assert.Single(adapted.Problems).Fault);
    }

    [Fact]
    public void Features_out_of_reach_are_refused_and_named()
    {
        OutlineFeatures wild = Own with { Waist = new(110, 60) };
        AdaptedOutline adapted = Adaptation.To(Source, wild);
        Assert.Null(adapted.Outline);
        Assert.NotEmpty(adapted.Problems);
    }

    private static OutlineStation Station(int turn) =>
        new(Source.Turns[turn].UMm, Source.Turns[turn].WidthMm);

    private static OutlineFeatures Scaled(OutlineFeatures f, double by) =>
        f with
        {
            BodyLengthMm = f.BodyLengthMm * by,
            UpperBout = new(f.UpperBout.UMm * by, f.UpperBout.WidthMm * by),
            Waist = new(f.Waist.UMm * by, f.Waist.WidthMm * by),
            LowerBout = new(f.LowerBout.UMm * by, f.LowerBout.WidthMm * by),
        };
}
