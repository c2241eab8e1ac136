using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Workboard;
using Formwright.Testing;
using NetTopologySuite.Geometries;
using Xunit;
using Point = Formwright.Curves.Point;

namespace Formwright.Jigs.Tests;

public sealed class ReliefMethodTests
{
    public static TheoryData<string> Models => [.. Examples.Models];

    [Theory]
    [MemberData(nameof(Models))]
    public void Spots_are_never_deeper_than_the_relief_anywhere_under_the_drill(string model)
    {
        Guitar guitar = Carved(model);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        double radius = guitar.Design.Workboard.SpotDiameterMm / 2;
        Assert.InRange(plan.Spots.Count, 40, 400);
        foreach (Spot spot in plan.Spots)
        {
            for (int i = 0; i < 40; i++)
            {
                (double sin, double cos) = Math.SinCos(i * 0.2);
                double r = radius * (i % 4) / 3;
                // Workboard frame to body frame: y turns its sign.
                Point under = new(spot.XMm - guitar.JoinMm + (r * cos), -spot.YBMm + (r * sin));
                Assert.True(plan.Relief.Shape.HeightAt(under) > spot.DepthMm - 0.005);
            }

            Assert.Contains(plan.Spots, other => other.XMm == spot.XMm && other.YBMm == -spot.YBMm);
        }

        // The row through the deepest place has a hole on the centreline within a tenth of the greatest depth.
        Assert.InRange(
            plan.Spots.Max(spot => spot.DepthMm),
            plan.Relief.DeepestMm - 0.15,
            plan.Relief.DeepestMm
        );
        Assert.Equal(plan.Spots.Count, plan.Board.Holes.Count(hole => hole.Kind == HoleKind.Spot));
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void A_gauge_fills_the_carved_relief_at_its_station(string model)
    {
        Guitar guitar = Carved(model);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Part[] gauges =
        [
            .. plan.Parts.Where(part =>
                part.Id.StartsWith("relief-gauge", StringComparison.Ordinal)
            ),
        ];
        Assert.Equal(3, gauges.Length);
        foreach (Part gauge in gauges)
        {
            double u =
                gauge.Marks.Single(mark => mark.Key == "mark.station").Value!.Value - guitar.JoinMm;
            Polygon shape = Polygons.Of(gauge.Outside);
            Assert.True(shape.IsValid);
            // Area below the board's face against the trapezoid sum of the relief's own depths.
            double half = guitar.Outline.WidthAt(u) / 2;
            double sum = 0;
            const int Steps = 2000;
            for (int i = 0; i < Steps; i++)
            {
                double y = -half + ((i + 0.5) * 2 * half / Steps);
                sum += plan.Relief.Shape.HeightAt(new Point(u, y)) * 2 * half / Steps;
            }

            double below = shape.Area - (40 * 2 * half);
            Assert.Equal(sum, below, 0.002 * sum);
            Assert.True(gauge.ErrorMm < 0.02);
        }
    }

    [Theory]
    [InlineData("cork-overlay", "material.cork")]
    [InlineData("plywood-overlay", "material.plywood")]
    public void An_overlay_is_a_ring_with_the_belly_cut_out_and_a_packing_under_the_neck(
        string method,
        string material
    )
    {
        Guitar guitar = Overlaid(method, 4);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Part ring = plan.Parts.Single(part => part.Id == "overlay");
        Part packing = plan.Parts.Single(part => part.Id == "packing");
        Assert.Equal(material, ring.Material);
        Polygon outer = Polygons.Of(ring.Outside);
        Polygon belly = Polygons.Of(Assert.Single(ring.Insides));
        Polygon neck = Polygons.Of(packing.Outside);
        Polygon board = Polygons.Of(plan.Board.Outside);
        Assert.True(outer.IsValid && belly.IsValid && outer.Contains(belly));
        // Ring and packing together are the board: nothing left bare, nothing twice.
        Assert.True(outer.Intersection(neck).Area < 1e-3);
        Assert.Equal(board.Area, outer.Union(neck).Area, 1e-6 * board.Area);
        // The rim stays: the belly keeps the rim's width from the outline, and starts where the dome starts.
        Polygon body = Polygons.Of(guitar.Outline, guitar.JoinMm);
        double least = belly.Coordinates.Min(c =>
            body.ExteriorRing.Distance(new NetTopologySuite.Geometries.Point(c))
        );
        Assert.Equal(guitar.Design.Dome.RimWidthMm, least, 0.03);
        Assert.Equal(guitar.JoinMm + guitar.Dome.StartUMm, belly.Coordinates.Min(c => c.X), 0.02);
        Assert.Empty(plan.Spots);
    }

    [Fact]
    public void Under_an_overlay_the_clearance_is_its_thickness_less_the_dome()
    {
        Guitar guitar = Overlaid("plywood-overlay", 4);
        Relief relief = Relief.Of(guitar);
        Assert.Equal(4 - guitar.Design.Dome.HeightMm, relief.ClearanceMm, 1e-12);
        double least = double.PositiveInfinity;
        for (double u = guitar.Dome.StartUMm; u < guitar.Outline.BodyLengthMm; u += 3)
        {
            for (double y = -180; y <= 180; y += 3)
            {
                Point at = new(u, y);
                if (relief.Shape.Region.Contains(at))
                {
                    least = Math.Min(least, relief.ClearanceAt(at));
                }
            }
        }

        Assert.Equal(relief.ClearanceMm, least, 0.01);
        Assert.True(least >= relief.ClearanceMm - 1e-9);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void The_clearance_is_told_everywhere_and_never_below_what_the_design_asks(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        bool carved = plan.Relief.Method == ReliefMethod.Carved;
        Assert.InRange(plan.Clearances.Count, 20, 60);
        foreach (ClearanceRow row in plan.Clearances)
        {
            double dome = guitar.Dome.Field.HeightAt(
                new Point(row.XMm - guitar.JoinMm, -row.AcrossMm)
            );
            Assert.Equal(row.DepthMm - dome, row.ClearanceMm, 1e-9);
            // Carved it fades with the dome; under an overlay it is least at the top.
            double least = carved
                ? guitar.Design.Workboard.ClearanceMm * dome / guitar.Design.Dome.HeightMm
                : guitar.Design.Workboard.ClearanceMm;
            Assert.True(row.ClearanceMm >= least - 1e-9);
        }

        // A carved relief holds every brace end; an overlay none of those over the belly.
        Assert.NotEmpty(plan.BraceEnds);
        Assert.Equal(carved, plan.BraceEnds.All(end => end.IsHeld));
        Assert.Equal(
            !carved,
            plan.Findings.Any(each => each.Code == "workboard.brace-end-over-hollow")
        );
    }

    [Fact]
    public void A_support_block_reaches_from_the_board_up_to_the_dome()
    {
        Guitar guitar = Overlaid("plywood-overlay", 4);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Part block = plan.Parts.Single(part => part.Id == "support-block2");
        double u = guitar.Design.HarmonicBars[1].AtMm;
        Polygon shape = Polygons.Of(block.Outside);
        Assert.True(shape.IsValid);
        foreach (Coordinate corner in shape.Coordinates.Where(c => c.X < 4 - 1e-9))
        {
            Assert.Equal(guitar.Dome.Field.HeightAt(new Point(u, corner.Y)), corner.X, 1e-9);
        }

        Assert.DoesNotContain(plan.Findings, each => each.Code == "workboard.bar-unsupported");
        Assert.Contains(plan.Findings, each => each.Code == "workboard.brace-end-over-hollow");
        Assert.NotEmpty(block.Name);
    }

    [Fact]
    public void The_bolts_grow_by_the_overlay()
    {
        MouldPlan carved = MouldMaker.Of(Examples.Guitar("heron"));
        MouldPlan overlaid = MouldMaker.Of(Overlaid("plywood-overlay", 4));
        Assert.Equal(carved.BoltLengthMm + 4, overlaid.BoltLengthMm, 1e-12);
        Assert.Equal(carved.DowelLengthMm + 4, overlaid.DowelLengthMm, 1e-12);
    }

    [Theory]
    [InlineData("workboard.overlay_thickness", "2.6", "workboard.overlay-too-thin")]
    [InlineData("neck.ramp", "3.5", "workboard.packing-thin")]
    [InlineData("dome.kind", "\"rim-on-sphere\"", "workboard.overlay-without-rim")]
    [InlineData("workboard.support_blocks", "false", "workboard.bar-unsupported")]
    public void A_broken_rule_is_found(string key, string value, string code)
    {
        Guitar guitar = Overlaid("plywood-overlay", 4, key, value);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Findings.Finding finding = plan.Findings.First(each => each.Code == code);
        Assert.Contains(
            DesignText.Keys(),
            spec =>
                spec.Path == finding.Field
                || finding.Field.StartsWith("harmonic_bars", StringComparison.Ordinal)
        );
        Assert.DoesNotContain("{", finding.Message + finding.Cure, StringComparison.Ordinal);
    }

    private static Guitar Carved(string model)
    {
        InstrumentDesign design = Examples.Design(model);
        return Examples.Build(
            design with
            {
                Workboard = design.Workboard with { Relief = ReliefMethod.Carved },
            }
        );
    }

    private static Guitar Overlaid(
        string method,
        double thickness,
        string? key = null,
        string value = ""
    )
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        text = DesignEdit.Set(text, "workboard.relief", $"\"{method}\"");
        text = DesignEdit.Set(
            text,
            "workboard.overlay_thickness",
            FormattableString.Invariant($"{thickness}")
        );
        text = key is null ? text : DesignEdit.Set(text, key, value);
        DesignReading reading = DesignText.Parse(text, "heron.toml");
        Assert.Empty(reading.Diagnostics);
        return Examples.Build(reading.Design!);
    }
}
