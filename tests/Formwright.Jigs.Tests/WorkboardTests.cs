using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;
using Formwright.Testing;
using NetTopologySuite.Geometries;
using Xunit;

namespace Formwright.Jigs.Tests;

public sealed class WorkboardTests
{
    public static TheoryData<string> Models => [.. Examples.Models];

    [Theory]
    [MemberData(nameof(Models))]
    public void The_board_stands_its_margin_outside_the_outline(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Polygon body = Polygons.Of(guitar.Outline, guitar.JoinMm);
        Polygon board = Polygons.Of(plan.Board.Outside);
        Assert.True(board.IsValid);
        Assert.True(board.Contains(body));
        foreach (Coordinate corner in board.Coordinates.Where(c => c.X > guitar.JoinMm + 120))
        {
            Assert.Equal(
                guitar.Design.Workboard.MarginMm,
                body.Distance(new NetTopologySuite.Geometries.Point(corner)),
                0.02
            );
        }

        Envelope box = board.EnvelopeInternal;
        Assert.Equal(-guitar.Design.Workboard.BeyondNutMm, box.MinX, 1e-9);
        Assert.Equal(guitar.TailMm + guitar.Design.Workboard.MarginMm, box.MaxX, 0.02);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void The_edge_has_no_corner_where_neck_and_body_part_meet(string model)
    {
        ArcPath edge = Jigs.Tooling.Of(Examples.Guitar(model)).Workboard.Board.Outside;
        int corners = 0;
        for (int i = 0; i < edge.Vertices.Count; i++)
        {
            double before = Heading(
                edge,
                (i + edge.Vertices.Count - 1) % edge.Vertices.Count,
                atEnd: true
            );
            double after = Heading(edge, i, atEnd: false);
            double kink = Math.Abs(Math.IEEERemainder(after - before, 2 * Math.PI));
            corners += kink > 0.02 ? 1 : 0;
        }

        // Only the two at the head end.
        Assert.Equal(2, corners);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Gaps_fall_evenly_along_the_ramp_and_show_the_relief(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        Dictionary<string, GapRow> rows = plan.GapTable.ToDictionary(row => row.Place);
        Assert.Equal(guitar.Design.Neck.RampMm, rows["nut"].GapMm);
        // Fret 5 lies at L (1 - 2^(-5/12)) and the join at L/2, so the gap there is ramp (2·2^(-5/12) - 1).
        Assert.Equal(
            guitar.Design.Neck.RampMm * ((2 * Math.Pow(2, -5 / 12.0)) - 1),
            rows["fret5"].GapMm,
            1e-12
        );
        Assert.Equal(0, rows["join"].GapMm);
        WorkboardDesign board = guitar.Design.Workboard;
        double deepest =
            board.Relief == ReliefMethod.Carved
                ? guitar.Design.Dome.HeightMm + board.ClearanceMm
                : board.OverlayThicknessMm;
        Assert.Equal(deepest, rows["deepest"].GapMm, 1e-9);
        Assert.True(
            plan.GapTable.Zip(plan.GapTable.Skip(1)).All(pair => pair.First.XMm <= pair.Second.XMm)
        );
    }

    [Fact]
    public void Relief_is_nothing_on_the_rim_and_above_the_start()
    {
        Guitar guitar = Examples.Guitar("heron");
        Relief relief = Relief.Of(guitar);
        Chain half = guitar.Outline.Half;
        for (double s = 0; s <= half.LengthMm; s += 5)
        {
            CurvePoint at = half.At(s);
            Curves.Point onRim = at.Position - (at.Normal * (guitar.Design.Dome.RimWidthMm - 0.05));
            Assert.Equal(0, relief.Shape.HeightAt(onRim));
        }

        Assert.Equal(0, relief.Shape.HeightAt(new Curves.Point(guitar.Dome.StartUMm - 0.1, 0)));
        Assert.True(relief.Shape.HeightAt(new Curves.Point(guitar.Dome.StartUMm + 5, 0)) > 0);
    }

    [Theory]
    [InlineData("workboard.thickness", "8", "workboard.relief-deeper-than-board")]
    [InlineData("neck.ramp", "12", "workboard.ramp-deeper-than-board")]
    [InlineData("workboard.margin", "30", "workboard.margin-narrower-than-wall")]
    [InlineData("workboard.clearance", "0", "workboard.no-clearance")]
    [InlineData("workboard.neck_width", "300", "workboard.neck-wider-than-board")]
    public void A_broken_rule_is_found(string key, string value, string code)
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        string edited = DesignEdit.Set(text, key, value);
        if (code == "workboard.ramp-deeper-than-board")
        {
            edited = DesignEdit.Set(edited, "workboard.thickness", "16");
        }

        if (code == "workboard.neck-wider-than-board")
        {
            edited = DesignEdit.Set(edited, "workboard.margin", "5");
        }

        DesignReading reading = DesignText.Parse(edited, "heron.toml");
        Assert.Empty(reading.Diagnostics);
        WorkboardPlan plan = Jigs.Tooling.Of(Examples.Build(reading.Design!)).Workboard;
        Findings.Finding finding = plan.Findings.First(each => each.Code == code);
        Assert.Contains(DesignText.Keys(), spec => spec.Path == finding.Field);
        Assert.DoesNotContain("{", finding.Message + finding.Cure, StringComparison.Ordinal);
    }

    private static double Heading(ArcPath path, int i, bool atEnd)
    {
        Curves.Point a = path.Vertices[i].Position;
        Curves.Point b = path.Vertices[(i + 1) % path.Vertices.Count].Position;
        double turning = 4 * Math.Atan(path.Vertices[i].Bulge);
        return Math.Atan2(b.Y - a.Y, b.X - a.X) + (atEnd ? turning / 2 : -turning / 2);
    }
}
