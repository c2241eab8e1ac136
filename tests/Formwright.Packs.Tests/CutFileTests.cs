using System.Text.Json;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Formwright.Sheets.Cutting;
using Formwright.Testing;
using Formwright.Writers;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>The cut files of real designs, read by ezdxf and compared with the chain.</summary>
public sealed class CutFileTests
{
    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void Every_part_reads_without_an_error_and_has_its_area_and_holes(string model)
    {
        Study study = Study.Of(
            DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!
        );
        Dictionary<string, Part> parts = [];
        foreach (Part part in study.Tooling!.Parts)
        {
            string path = Tools.TempFile(".dxf");
            File.WriteAllText(path, DxfWriter.Write(CutParts.Of(part)));
            parts[path] = part;
        }

        string script = Repository.PathOf("tests", "Formwright.Packs.Tests", "read_dxf.py");
        using JsonDocument read = JsonDocument.Parse(
            Tools.Run("/usr/bin/python3", [script, .. parts.Keys])
        );
        foreach ((string path, Part part) in parts)
        {
            JsonElement file = read.RootElement.GetProperty(path);
            Assert.Empty(file.GetProperty("errors").EnumerateArray());
            Assert.Equal(4, file.GetProperty("units").GetInt32());
            CheckAreas(file, part);
            CheckHoles(file, part);
        }

        CheckAgainstTheChain(read, parts, study.Guitar!);
    }

    private static void CheckAreas(JsonElement file, Part part)
    {
        double[] expected =
        [
            .. part
                .Insides.Concat(part.Pockets.Select(pocket => pocket.Edge))
                .Append(part.Outside)
                .Select(edge => ArcPaths.AreaMm2(edge))
                .Order(),
        ];
        double[] found =
        [
            .. file.GetProperty("areas")
                .EnumerateArray()
                .Select(area => area[2].GetDouble())
                .Order(),
        ];
        Assert.Equal(expected.Length, found.Length);
        for (int i = 0; i < found.Length; i++)
        {
            // Coordinates are written to a rounding that moves an edge by far less than 1e-4 mm over some 3 m.
            Assert.Equal(expected[i], found[i], 0.3);
        }
    }

    private static void CheckHoles(JsonElement file, Part part)
    {
        CutPart cut = CutParts.Of(part);
        JsonElement[] circles = [.. file.GetProperty("circles").EnumerateArray()];
        Assert.Equal(cut.Holes.Count, circles.Length);
        foreach (CutHole hole in cut.Holes)
        {
            Assert.Contains(
                circles,
                circle =>
                    Math.Abs(circle[0].GetDouble() - hole.Centre.X) < 0.02
                    && Math.Abs(circle[1].GetDouble() - hole.Centre.Y) < 0.02
                    && Math.Abs(circle[2].GetDouble() - hole.DiameterMm) < 1e-6
            );
        }
    }

    // The full template's outer edge encloses the area that the exact chain does: 0.01 mm all round is the arcs' tolerance.
    private static void CheckAgainstTheChain(
        JsonDocument read,
        Dictionary<string, Part> parts,
        Guitar guitar
    )
    {
        string full = parts.Single(pair => pair.Value.Id == "template-full").Key;
        double area = read
            .RootElement.GetProperty(full)
            .GetProperty("areas")
            .EnumerateArray()
            .Max(a => a[2].GetDouble());
        Assert.Equal(guitar.Outline.AreaMm2, area, 0.01 * 2 * guitar.Outline.HalfPerimeterMm);
    }
}
