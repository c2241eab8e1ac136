using Formwright.Curves;
using Formwright.Trace.Aligning;
using Formwright.Trace.Files;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>Outlines of the three models, sampled, turned, moved, scaled and shaken, come back.</summary>
public class RoundTripTests
{
    [Theory]
    [InlineData("heron", 0.0, 0.3)]
    [InlineData("heron", 0.02, 1.1)]
    [InlineData("dunlin", 0.05, 2.6)]
    [InlineData("dunlin", 0.2, -0.9)]
    [InlineData("plover", 0.1, -2.0)]
    [InlineData("plover", 0.2, 3.0)]
    public void An_outline_comes_back_within_the_tolerance(string name, double noise, double turn)
    {
        Outline model = Given.Model(name);
        Random random = new(name.Length + (int)(1000 * noise));
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(model.Half, 0.7, noise, random),
                Given.Half(model.Half, 0.7, noise, random),
                turn,
                dx: 123,
                dy: -45
            )
        );
        // The tolerance, and what noise of this size leaves of a smooth curve: about 2000 points, of which a wave of the curve holds
        // some hundred, so a tenth of the noise.
        Assert.InRange(Given.Apart(trace.Fair, model), 0, 0.05 + (0.1 * noise) + 0.003);
        Assert.InRange(trace.Fair.BodyLengthMm, model.BodyLengthMm - 0.1, model.BodyLengthMm + 0.1);
        Assert.True(trace.Misfit.IsWithinTolerance);
        Assert.Empty(trace.Bumps);
        Assert.InRange(trace.Floor.PointNoiseMm, 0.85 * noise, (1.15 * noise) + 0.001);
        Assert.InRange(
            Math.Abs(Math.IEEERemainder(trace.Alignment.AngleRad - turn, 2 * Math.PI)),
            0,
            1e-4 + (0.002 * noise)
        );
        // Ten pieces hold these outlines to 0.05 mm: the fewest that any start led to.
        Assert.InRange(trace.Misfit.Segments, 5, 11);
    }

    [Fact]
    public void Noise_takes_pieces_away_rather_than_adding_them()
    {
        Outline model = Given.Model("heron");
        Random random = new(7);
        TraceResult tight = Given.Run(
            Given.Whole(
                Given.Half(model.Half, 0.7, 0.1, random),
                Given.Half(model.Half, 0.7, 0.1, random)
            ),
            new TraceOptions { ToleranceMm = 0.02 }
        );
        TraceResult loose = Given.Run(
            Given.Whole(
                Given.Half(model.Half, 0.7, 0.1, random),
                Given.Half(model.Half, 0.7, 0.1, random)
            ),
            new TraceOptions { ToleranceMm = 0.5 }
        );
        Assert.InRange(tight.Misfit.Segments, 10, 16);
        Assert.InRange(loose.Misfit.Segments, 3, 7);
    }

    [Fact]
    public void Features_are_read_off_and_the_design_needs_nothing_else()
    {
        Outline model = Given.Model("heron");
        Random random = new(3);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(model.Half, 0.7, 0.02, random),
                Given.Half(model.Half, 0.7, 0.02, random)
            )
        );
        OutlineFeatures plain = Assert.IsType<OutlineFeatures>(trace.Plain);
        Assert.Equal(488, plain.BodyLengthMm, 0.05);
        Assert.Equal(104, plain.UpperBout.UMm, 0.2);
        Assert.Equal(282, plain.UpperBout.WidthMm, 0.05);
        Assert.Equal(190, plain.Waist.UMm, 0.2);
        Assert.Equal(236, plain.Waist.WidthMm, 0.05);
        Assert.Equal(356, plain.LowerBout.UMm, 0.2);
        Assert.Equal(368, plain.LowerBout.WidthMm, 0.05);
        Assert.Equal(282, trace.Features.UpperBout!.WidthMm, 0.15);
        Assert.Equal(236, trace.Features.Waist!.WidthMm, 0.15);
        Assert.Equal(368, trace.Features.LowerBout!.WidthMm, 0.15);
        Assert.Equal(1 / model.Turns[0].CurvaturePerMm, trace.Features.UpperBout.RadiusMm, 4.0);
        Assert.Null(TracedDesign.Outline(trace).Curve);
    }

    [Theory]
    [InlineData(KnownLengthKind.BodyLength, 488)]
    [InlineData(KnownLengthKind.LargestWidth, 368)]
    public void A_known_length_sets_the_scale(KnownLengthKind what, double length)
    {
        Outline model = Given.Model("heron");
        Random random = new(3);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(model.Half, 0.7, 0, random),
                Given.Half(model.Half, 0.7, 0, random),
                turn: 0.7,
                scale: 0.0123
            ),
            new TraceOptions { Known = new KnownLength(what, length) }
        );
        Assert.Equal(1 / 0.0123, trace.ScaleFactor, 0.02);
        // A width that is met exactly by a curve within 0.05 mm leaves the scale, and with it the far end, free by 488/368 of twice that.
        Assert.InRange(Given.Apart(trace.Fair, model), 0, 0.05 + (2 * 0.05 * 488 / 368));
        Assert.Equal(
            length,
            what == KnownLengthKind.BodyLength
                ? trace.Fair.BodyLengthMm
                : 2 * trace.Fair.Half.Box.Max.Y,
            0.001
        );
    }

    [Fact]
    public void One_half_is_enough()
    {
        Outline model = Given.Model("dunlin");
        Point[] half = Given.Half(model.Half, 0.7, 0.02, new Random(5));
        TraceResult trace = Given.Run(Given.OfPoints(half, isClosed: false));
        Assert.Equal(CentrelineSource.Ends, trace.Alignment.Source);
        Assert.Empty(trace.Bass);
        Assert.Empty(trace.Differences);
        Assert.InRange(Given.Apart(trace.Fair, model), 0, 0.1);
    }

    [Fact]
    public void Tracing_from_behind_swaps_the_sides()
    {
        Outline model = Given.Model("heron");
        Random random = new(3);
        TraceFile file = Given.Whole(
            Given.Half(model.Half, 0.7, 0.01, random, (300, 30, 0.4)),
            Given.Half(model.Half, 0.7, 0.01, random)
        );
        Assert.Equal(TraceSide.Treble, Assert.Single(Given.Run(file).Bumps).Side);
        TraceOptions behind = new() { IsSeenFromBehind = true };
        Assert.Equal(TraceSide.Bass, Assert.Single(Given.Run(file, behind).Bumps).Side);
    }

    [Fact]
    public void The_heel_is_at_the_narrow_end_unless_the_maker_says_otherwise()
    {
        Outline model = Given.Model("heron");
        Random random = new(3);
        // Body frame as it is: heel at the left.
        TraceFile file = Given.Whole(
            Given.Half(model.Half, 0.7, 0, random),
            Given.Half(model.Half, 0.7, 0, random)
        );
        Assert.Equal(104, Given.Run(file).Features.UpperBout!.UMm, 0.5);
        TraceResult turned = Given.Run(file, new TraceOptions { Heel = HeelSide.Right });
        Assert.Equal(488 - 356, turned.Features.UpperBout!.UMm, 0.5);
    }

    [Fact]
    public void Two_different_sides_are_told_apart_and_averaged()
    {
        Outline model = Given.Model("heron");
        Outline wider = MinimumVariation
            .Solve(Given.Models["heron"] with { LowerBout = new(356, 372) })
            .Outline!;
        Random random = new(3);
        TraceFile file = Given.Whole(
            Given.Half(wider.Half, 0.7, 0.01, random),
            Given.Half(model.Half, 0.7, 0.01, random)
        );
        TraceOptions given = new()
        {
            Centreline = new Centreline(new Point(0, 0), new Point(488, 0)),
        };
        TraceResult averaged = Given.Run(file, given);
        SideDifference atBout = averaged.Differences.MinBy(row => Math.Abs(row.UMm - 356));
        Assert.Equal(186, atBout.TrebleMm, 0.1);
        Assert.Equal(184, atBout.BassMm, 0.1);
        Assert.Equal(2, atBout.TrebleOverBassMm, 0.1);
        Assert.Equal(370, averaged.Features.LowerBout!.WidthMm, 0.2);
        Assert.Equal(
            372,
            Given.Run(file, given with { Sides = SideChoice.Treble }).Features.LowerBout!.WidthMm,
            0.2
        );
        Assert.Equal(
            368,
            Given.Run(file, given with { Sides = SideChoice.Bass }).Features.LowerBout!.WidthMm,
            0.2
        );
    }
}
