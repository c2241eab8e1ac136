using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Templates;
using NetTopologySuite.Geometries;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class TemplateTests
{
    public static TheoryData<string> Models => [.. Examples.Models];

    [Theory]
    [MemberData(nameof(Models))]
    public void Half_and_mating_template_close_the_outline_without_a_gap(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        IReadOnlyList<Part> parts = TemplateMaker.Of(guitar);
        Assert.Equal(
            ["template-half", "template-full", "template-mating"],
            parts.Select(part => part.Id)
        );
        Polygon half = Polygons.Of(parts[0].Outside);
        Polygon mating = Polygons.Of(parts[2].Outside);
        Assert.True(half.IsValid && mating.IsValid);
        Assert.True(half.Intersection(mating).Area < 1e-6 * half.Area);
        Assert.True(half.Union(mating) is Polygon, "they share the whole edge");
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void The_full_template_is_the_outline(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        Part full = TemplateMaker.Of(guitar)[1];
        Assert.Equal(
            guitar.Outline.AreaMm2,
            ArcPaths.AreaMm2(full.Outside),
            0.01 * 2 * guitar.Outline.HalfPerimeterMm
        );
        Polygon body = Polygons.Of(guitar.Outline, guitar.JoinMm);
        Polygon inside = Polygons.Of(full.Insides[0]);
        Assert.True(body.Contains(inside));
        Assert.All(
            inside.Coordinates,
            c =>
                Assert.Equal(
                    guitar.Design.Templates.WidthMm,
                    body.ExteriorRing.Distance(new Point(c)),
                    0.02
                )
        );
    }
}
