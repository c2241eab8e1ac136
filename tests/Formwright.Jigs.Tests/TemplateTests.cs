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

    [Theory]
    [MemberData(nameof(Models))]
    public void The_placement_template_shows_bars_and_bridge_where_they_go(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        Part part = BenchTemplates.Of(guitar).Single(each => each.Id == "template-placement");
        Polygon body = Polygons.Of(part.Outside);
        Polygon[] windows = [.. part.Insides.Select(Polygons.Of)];
        Assert.Equal((2 * guitar.Design.HarmonicBars.Count) + 1, windows.Length);
        Assert.All(windows, window => Assert.True(window.IsValid && body.Contains(window)));
        Assert.All(
            windows,
            window =>
                Assert.True(
                    windows.Where(other => other != window).All(other => other.Distance(window) > 7)
                )
        );
        // A straight edge along both windows of a bar is the bar's own edge.
        foreach (Design.Sections.HarmonicBarDesign bar in guitar.Design.HarmonicBars)
        {
            double at = guitar.JoinMm + bar.AtMm;
            Assert.Equal(2, windows.Count(window => Math.Abs(window.Centroid.X - at) < 1e-9));
        }

        // Saddle ahead of the bridge's middle, on the scale length.
        Polygon bridge = windows.MaxBy(window => window.Area)!;
        Assert.Equal(
            guitar.Design.Identity.ScaleMm + guitar.Design.Saddle.AheadMm,
            bridge.Centroid.X,
            1e-9
        );
        Assert.Equal(0, bridge.Centroid.Y, 1e-9);
        Assert.Equal(
            guitar.JoinMm + guitar.Design.Soundhole.AtMm,
            Assert.Single(part.Holes).Centre.X,
            1e-9
        );
    }

    [Fact]
    public void The_fret_rule_has_its_slots_where_equal_temperament_puts_them()
    {
        // 650 mm, L (1 - 2^(-k/12)), frets 1, 7, 12 and 19 as tabled to 1e-6.
        (int Fret, double Mm)[] table =
        [
            (1, 36.4816968),
            (7, 216.177047),
            (12, 325.0),
            (19, 433.088524),
        ];
        IReadOnlyList<Part> parts = BenchTemplates.Of(Examples.Guitar("heron"));
        foreach (string id in new[] { "fret-rule", "template-fingerboard" })
        {
            Mark[] slots =
            [
                .. parts.Single(each => each.Id == id).Marks.Where(mark => mark.Key == "mark.fret"),
            ];
            Assert.All(
                table,
                row => Assert.Equal(row.Mm, slots.Single(s => s.Value == row.Fret).From.X, 1e-6)
            );
            Assert.All(slots, slot => Assert.Equal(slot.From.X, slot.To.X));
        }
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void The_fingerboard_template_is_a_straight_taper_through_nut_and_join(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        Part part = BenchTemplates.Of(guitar).Single(each => each.Id == "template-fingerboard");
        Polygon board = Polygons.Of(part.Outside);
        double WidthAt(double x) =>
            board
                .Intersection(new LineString([new Coordinate(x, -100), new Coordinate(x, 100)]))
                .Length;
        Assert.Equal(guitar.Design.Neck.WidthNutMm, WidthAt(1e-7), 1e-6);
        Assert.Equal(guitar.Design.Neck.WidthJoinMm, WidthAt(guitar.JoinMm), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Gauges_over_the_dome_leave_no_light_and_rest_on_the_rim(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        Part[] gauges =
        [
            .. BenchTemplates
                .Of(guitar)
                .Where(part => part.Id.StartsWith("dome-gauge", StringComparison.Ordinal)),
        ];
        Assert.Equal(2, gauges.Length);
        Assert.All(gauges, gauge => Assert.True(Polygons.Of(gauge.Outside).IsValid));
        double half = guitar.Outline.BodyLengthMm / 2;
        foreach (Curves.ArcVertex corner in gauges[0].Outside.Vertices.Skip(2))
        {
            Curves.Point on = new(corner.Position.Y + half, 0);
            Assert.Equal(-guitar.Dome.Field.HeightAt(on), corner.Position.X, 1e-9);
        }

        Assert.Equal(0, gauges[0].Outside.Vertices[2].Position.X);
        Assert.Equal(0, gauges[0].Outside.Vertices[^1].Position.X);
        Assert.All(gauges, gauge => Assert.InRange(gauge.ErrorMm, 0, 0.02));
    }
}
