using Formwright.Design;
using Formwright.Instrument;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;
using NetTopologySuite.Geometries;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class MouldTests
{
    public static TheoryData<string> Models => [.. Examples.Models];

    [Theory]
    [MemberData(nameof(Models))]
    public void The_inner_face_is_the_outline_and_the_wall_is_as_wide_as_asked(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        MouldPlan plan = MouldMaker.Of(guitar);
        Polygon body = Polygons.Of(guitar.Outline, guitar.JoinMm);
        Polygon part = Polygons.Of(plan.Parts[1].Outside);

        // No part of the wall lies inside the body, and none further out than the wall is wide.
        Assert.True(part.Intersection(body).Area < 0.02 * guitar.Outline.HalfPerimeterMm);
        double farthest = part.Coordinates.Max(c => body.Distance(new Point(c)));
        Assert.Equal(guitar.Design.Mould.WallMm, farthest, 0.02);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Every_hole_stands_where_it_says_outside_the_rebate_and_clear_of_the_edges(
        string model
    )
    {
        Guitar guitar = Examples.Guitar(model);
        MouldPlan plan = MouldMaker.Of(guitar);
        Polygon body = Polygons.Of(guitar.Outline, guitar.JoinMm);
        Assert.Empty(plan.Findings);
        Assert.Equal(10, plan.Fasteners.Count);
        foreach (Fastener fastener in plan.Fasteners)
        {
            Point centre = new(fastener.Centre.X, fastener.Centre.Y);
            bool bass = fastener.Centre.Y > 0;
            Part bottom = plan.Parts.Single(part =>
                part.Id == (bass ? "mould-bottom-bass" : "mould-bottom-treble")
            );
            double toBody = body.Distance(centre);
            double toEdge = Polygons.Of(bottom.Outside).ExteriorRing.Distance(centre);
            Assert.True(toBody - guitar.Design.Mould.Rebate.WidthMm >= 1.5 * fastener.DiameterMm);
            Assert.True(toEdge >= 1.5 * fastener.DiameterMm);
            double expected = Math.Min(toBody - guitar.Design.Mould.Rebate.WidthMm, toEdge);
            Assert.Equal(expected, fastener.EdgeDistanceMm, 0.02);
            Assert.Contains(bottom.Holes, hole => hole.Centre == fastener.Centre);
        }
    }

    [Fact]
    public void Halves_are_mirror_images_and_bass_lies_at_positive_y_b()
    {
        MouldPlan plan = MouldMaker.Of(Examples.Guitar("heron"));
        Assert.Equal(6, plan.Parts.Count);
        foreach (Part part in plan.Parts)
        {
            double sign = part.Id.EndsWith("bass", StringComparison.Ordinal) ? 1 : -1;
            Assert.All(part.Outside.Vertices, vertex => Assert.True(sign * vertex.Position.Y > 0));
        }

        Assert.Equal(
            ArcPaths.AreaMm2(plan.Parts[0].Outside),
            Polygons.Of(plan.Parts[1].Outside).Area,
            1e-4 * ArcPaths.AreaMm2(plan.Parts[0].Outside)
        );
    }

    [Theory]
    [InlineData("mould.rebate", "{ width = 60, depth = 2 }", "mould.rebate-wider-than-wall")]
    [InlineData("mould.rebate", "{ width = 8, depth = 3 }", "mould.rebate-too-deep")]
    [InlineData("mould.rebate", "{ width = 3, depth = 2 }", "mould.overhang-wider-than-rebate")]
    [InlineData("mould.rebate", "{ width = 40, depth = 2 }", "mould.hole-too-near-edge")]
    [InlineData("mould.heel_cut", "150", "mould.ends-cut-too-far")]
    [InlineData("mould.fasteners", "{ bolts = 20, dowels = 12 }", "mould.holes-too-close")]
    public void A_broken_rule_is_found_and_names_a_field_that_exists(
        string key,
        string value,
        string code
    )
    {
        string text = File.ReadAllText(
            Formwright.Testing.Repository.PathOf("examples", "heron.toml")
        );
        DesignReading reading = DesignText.Parse(DesignEdit.Set(text, key, value), "heron.toml");
        Assert.Empty(reading.Diagnostics);
        MouldPlan plan = MouldMaker.Of(Examples.Build(reading.Design!));
        Findings.Finding finding = plan.Findings.First(each => each.Code == code);
        Assert.Contains(DesignText.Keys(), spec => spec.Path == finding.Field);
        Assert.DoesNotContain(
            "{",
            finding.Message + finding.Cure + finding.Source,
            StringComparison.Ordinal
        );
    }
}
