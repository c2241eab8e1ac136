using System.Text.Json;
using CsCheck;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Testing;

namespace Formwright.Writers.Tests;

public sealed class DxfTests
{
    private const string Project = "Formwright.Writers.Tests";

    private static JsonElement Read(string dxf)
    {
        string file = Tools.TempFile(".dxf");
        File.WriteAllText(file, dxf);
        string script = Repository.PathOf("tests", Project, "read_dxf.py");
        using JsonDocument json = JsonDocument.Parse(Tools.Run("/usr/bin/python3", script, file));
        return json.RootElement.Clone();
    }

    [Fact]
    public void Sample_part_is_as_approved() =>
        Approved.Check(Project, "part.dxf", DxfWriter.Write(Sample.Part));

    [Fact]
    public void Ezdxf_reads_the_part_without_an_error()
    {
        JsonElement read = Read(DxfWriter.Write(Sample.Part));
        Assert.Equal("AC1015", read.GetProperty("version").GetString());
        // $INSUNITS 4: millimetres.
        Assert.Equal(4, read.GetProperty("units").GetInt32());
        Assert.Equal(0, read.GetProperty("errors").GetArrayLength());
        Assert.Equal(0, read.GetProperty("fixes").GetArrayLength());
        string?[] layers =
        [
            .. read.GetProperty("layers").EnumerateArray().Select(l => l.GetString()),
        ];
        Assert.Subset(
            layers.ToHashSet(),
            new HashSet<string?>
            {
                "outside-cut",
                "inside-cut",
                "pocket-2.5mm",
                "engrave",
                "drill",
                "drill-12mm",
            }
        );
    }

    [Fact]
    public void Ezdxf_measures_areas_and_holes_as_they_are()
    {
        JsonElement[] entities =
        [
            .. Read(DxfWriter.Write(Sample.Part)).GetProperty("entities").EnumerateArray(),
        ];
        JsonElement On(string layer) =>
            entities.Single(e =>
                e.GetProperty("layer").GetString() == layer
                && e.GetProperty("kind").GetString() != "TEXT"
            );
        double Of(JsonElement e, string name) => e.GetProperty(name).GetDouble();

        // Trapezium of 40 and 50 over 100, and the segment that a quarter circle cuts off: r²(π/2 - 1)/2, r = 25√2.
        JsonElement outside = On("outside-cut");
        double segment = 1250 * ((Math.PI / 2) - 1) / 2;
        Assert.True(outside.GetProperty("closed").GetBoolean());
        Assert.Equal(4, outside.GetProperty("count").GetInt32());
        Assert.Equal(4500 + segment, Of(outside, "area"), 0.02);
        Assert.Equal(75 + (25 * Math.Sqrt(2)), Of(outside, "right"), 0.01);

        // A slot: 20 × 10 and a circle of radius 5.
        JsonElement pocket = On("pocket-2.5mm");
        Assert.Equal(200 + (25 * Math.PI), Of(pocket, "area"), 0.02);
        Assert.Equal(55, Of(pocket, "left"), 0.01);

        foreach (
            (string layer, double x, double y, double radius) in new[]
            {
                ("inside-cut", 35, 0, 9),
                ("drill", 90, 18, 3.2),
                ("drill-12mm", 12, -12.5, 4.0),
            }
        )
        {
            JsonElement circle = On(layer);
            Assert.Equal("CIRCLE", circle.GetProperty("kind").GetString());
            Assert.Equal(x, Of(circle, "x"), 1e-6);
            Assert.Equal(y, Of(circle, "y"), 1e-6);
            Assert.Equal(radius, Of(circle, "radius"), 1e-6);
        }

        JsonElement text = entities.Single(e => e.GetProperty("kind").GetString() == "TEXT");
        Assert.Equal("señal ½", text.GetProperty("text").GetString());
        Assert.False(On("engrave").GetProperty("closed").GetBoolean());
    }

    [Fact]
    public void Own_audit_finds_nothing_in_what_we_write() =>
        Assert.Empty(DxfAudit.Of(DxfWriter.Write(Sample.Part)));

    [Fact]
    public void Random_parts_pass_the_own_audit()
    {
        Gen<Point> place = Gen.Select(Gen.Int[-2000, 2000], Gen.Int[1, 1_000_000])
            .Select((x, part) => new Point(x + (part * 7e-7), x + (part * 1e-3)));
        Gen<Segment> piece = Gen.Select(place, Gen.Double[-1.5, 1.5], Gen.Bool)
            .Select(
                (end, bulge, arc) =>
                    arc ? (Segment)new ArcSegment(end, bulge) : new LineSegment(end)
            );
        Gen.Select(place, piece.Array[2, 30], Gen.Bool, place, Gen.Double[0.5, 50])
            .Holds(
                (start, pieces, returns, hole, diameter) =>
                {
                    // Some contours come back to their start by themselves, and some stand still for a piece.
                    Segment[] all = returns
                        ? [.. pieces, new LineSegment(pieces[^1].End), new ArcSegment(start, 0.3)]
                        : pieces;
                    CutPart part = new(
                        "random",
                        [
                            new CutContour(
                                CutOperation.OutsideCut,
                                new Shape(start, all, closed: true)
                            ),
                        ]
                    )
                    {
                        Holes = [new CutHole(hole, diameter)],
                    };
                    return DxfAudit.Of(DxfWriter.Write(part)).Count == 0;
                },
                iter: 500
            );
    }

    [Theory]
    [InlineData(" 40\n3.2\n", " 40\nNaN\n", "no finite number")]
    [InlineData(" 40\n3.2\n", " 40\n0.0\n", "has no size")]
    [InlineData(" 70\n1\n 43\n", " 70\n0\n 43\n", null)]
    [InlineData("  8\ndrill\n", "  8\nbore\n", "no layer")]
    [InlineData(" 90\n4\n", " 90\n5\n", "not as many")]
    [InlineData("$INSUNITS\n 70\n4\n", "$INSUNITS\n 70\n1\n", "millimetres")]
    [InlineData("  0\nEOF\n", "", "does not end")]
    [InlineData("  0\nCIRCLE\n", "  0\nSPLINE\n", "not used")]
    [InlineData(" 10\n100.0\n 20\n-20.0\n", " 10\n0.0\n 20\n-20.0\n", "no length")]
    [InlineData("  5\n100010\n", "  5\n100011\n", "stands twice")]
    public void Own_audit_sees_what_was_broken(string from, string to, string? complaint)
    {
        string good = DxfWriter.Write(Sample.Part);
        string broken = good.Replace(from, to, StringComparison.Ordinal);
        Assert.NotEqual(good, broken);
        IReadOnlyList<DxfFault> faults = DxfAudit.Of(broken);
        if (complaint is not null)
        {
            Assert.Contains(faults, f => f.Message.Contains(complaint, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Own_audit_sees_a_repeated_first_vertex_and_a_missing_flag()
    {
        Shape open = Shape.Polyline([new(0, 0), new(10, 0), new(10, 10), new(0, 0)]);
        string dxf = DxfWriter.Write(
            new CutPart("open", [new CutContour(CutOperation.Engrave, open)])
        );
        Assert.Contains(
            DxfAudit.Of(dxf),
            f => f.Message.Contains("not flagged", StringComparison.Ordinal)
        );
        string closed = dxf.Replace(" 70\n0\n 43\n", " 70\n1\n 43\n", StringComparison.Ordinal);
        Assert.Contains(
            DxfAudit.Of(closed),
            f => f.Message.Contains("repeated", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Caller_mistakes_throw()
    {
        Shape line = Shape.Line(new(0, 0), new(1, 0));
        Assert.Throws<ArgumentException>(() => new CutContour(CutOperation.OutsideCut, line));
        Assert.Throws<ArgumentException>(() => new CutContour(CutOperation.Engrave, Sample.Plate));
        Assert.Throws<ArgumentException>(() => new CutHole(new(double.NaN, 0), 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CutHole(new(0, 0), -3));
        Assert.Throws<ArgumentException>(() => DxfWriter.Write(new CutPart("nothing", [])));
    }
}
