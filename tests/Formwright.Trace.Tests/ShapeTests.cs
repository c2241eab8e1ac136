using Formwright.Curves;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>Exact ellipses and arcs, whose perimeters are known.</summary>
public class ShapeTests
{
    // Perimeters of ellipses, semi-axes (2,1) 9.68844822055 and (10,6) 51.0539977268, computed from the complete elliptic integral; scaled.
    [Theory]
    [InlineData(200, 100, 968.844822055)]
    [InlineData(200, 120, 1021.079954536)]
    public void An_ellipse_keeps_its_perimeter(double a, double b, double perimeter)
    {
        Point[] points =
        [
            .. Enumerable
                .Range(0, 2000)
                .Select(i => 2 * Math.PI * i / 2000)
                .Select(t => new Point(50 + (a * Math.Cos(t)), (b * Math.Sin(t)) - 9)),
        ];
        TraceResult trace = Given.Run(
            Given.OfPoints(points, isClosed: true),
            new TraceOptions { ToleranceMm = 0.02 }
        );
        Assert.True(trace.Misfit.IsWithinTolerance);
        // A curve within 0.02 mm everywhere, leaving to both sides alike, differs in length by far less than π · 0.02 on each half.
        Assert.InRange(2 * trace.Fair.HalfPerimeterMm, perimeter - 0.1, perimeter + 0.1);
        Assert.InRange(trace.Fair.AreaMm2, (Math.PI * a * b) - 15, (Math.PI * a * b) + 15);
        Assert.Empty(trace.Bumps);
        Assert.False(trace.Features.IsGuitar);
        Assert.Equal(2 * b, trace.Features.LowerBout!.WidthMm, 0.05);
        Assert.Equal(2 * a, trace.Fair.BodyLengthMm, 0.05);
        Assert.False(TracedDesign.CanBeWritten(trace));
    }

    [Fact]
    public void A_circle_is_one_piece()
    {
        Point[] points =
        [
            .. Enumerable
                .Range(0, 900)
                .Select(i => 2 * Math.PI * i / 900)
                .Select(t => new Point(180 * Math.Cos(t), 180 * Math.Sin(t))),
        ];
        TraceResult trace = Given.Run(Given.OfPoints(points, isClosed: true));
        Assert.Equal(1, trace.Misfit.Segments);
        Assert.Equal(360 * Math.PI, 2 * trace.Fair.HalfPerimeterMm, 0.02);
        Assert.Empty(trace.Bumps);
    }

    [Fact]
    public void An_outline_of_arcs_is_followed_although_no_fair_curve_has_its_steps()
    {
        Outline arcs = ArcOutline.Make();
        Random random = new(1);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(arcs.Half, 0.5, 0, random),
                Given.Half(arcs.Half, 0.5, 0, random),
                turn: 0.4
            )
        );
        // Where one arc meets the next the bend jumps; a curve whose bend does not jump leaves the arcs there.
        Assert.InRange(Given.Apart(trace.Fair, arcs), 0, 0.25);
        Assert.InRange(
            2 * trace.Fair.HalfPerimeterMm,
            (2 * arcs.HalfPerimeterMm) - 0.5,
            (2 * arcs.HalfPerimeterMm) + 0.5
        );
        Assert.All(trace.Bumps, bump => Assert.InRange(bump.HeightMm, 0, 0.2));
    }

    [Fact]
    public void Flats_are_seen()
    {
        Outline flat = MinimumVariation
            .Solve(Given.Models["heron"] with { HeelFlatMm = 60, TailFlatMm = 40 })
            .Outline!;
        Random random = new(1);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(flat.Half, 0.5, 0.02, random),
                Given.Half(flat.Half, 0.5, 0.02, random)
            )
        );
        Assert.InRange(Given.Apart(trace.Fair, flat), 0, 0.06);
        Assert.Equal(60, trace.Features.HeelFlatMm, 1.0);
        Assert.Equal(40, trace.Features.TailFlatMm, 1.0);
        Assert.Equal(60, trace.Plain!.HeelFlatMm, 1.0);
        Assert.Equal(40, trace.Plain.TailFlatMm, 1.0);
        Assert.Empty(trace.Bumps);
    }

    [Theory]
    [InlineData(1.1)]
    [InlineData(0.9)]
    public void An_outline_with_radii_of_its_own_has_no_bump(double factor)
    {
        foreach (
            OutlineFeatures features in (OutlineFeatures[])
                [
                    Given.Models["heron"] with
                    {
                        UpperBout = new(104, 282, 71 * factor),
                    },
                    Given.Models["heron"] with
                    {
                        Waist = new(190, 236, 73 * factor),
                    },
                    Given.Models["heron"] with
                    {
                        LowerBout = new(356, 368, 107 * factor),
                    },
                    Given.Models["heron"] with
                    {
                        HeelRadiusMm = 194 * factor,
                        TailRadiusMm = 311 * factor,
                    },
                ]
        )
        {
            Outline outline = MinimumVariation.Solve(features).Outline!;
            Random random = new(1);
            TraceResult trace = Given.Run(
                Given.OfPoints(Given.Half(outline.Half, 0.5, 0.02, random), isClosed: false)
            );
            Assert.Empty(trace.Bumps);
            // The tolerance, and what is too low to be told from the shape: six tenths of the lowest bump told, 0.05 mm.
            Assert.InRange(Given.Apart(trace.Fair, outline), 0, 0.05 + 0.03);
        }
    }
}
