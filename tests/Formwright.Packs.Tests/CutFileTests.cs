using System.Text.Json;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Formwright.Sheets.Cutting;
using Formwright.Testing;
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
        IReadOnlyList<(Part Part, JsonElement File)> files = CutFiles.Read(study.Tooling!.Parts);
        foreach ((Part part, JsonElement file) in files)
        {
            Assert.Equal(4, file.GetProperty("units").GetInt32());
            // Coordinates are written to a rounding that moves an edge by far less than 1e-4 mm over some 3 m.
            CutFiles.CheckAreas(part, file, toleranceMm2: 0.3);
            CheckHoles(file, part);
        }

        CheckAgainstTheChain(files, study.Guitar!);
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
        IEnumerable<(Part Part, JsonElement File)> files,
        Guitar guitar
    )
    {
        double area = CutFiles
            .AreasMm2(files.Single(each => each.Part.Id == "template-full").File)
            .Max();
        Assert.Equal(guitar.Outline.AreaMm2, area, 0.01 * 2 * guitar.Outline.HalfPerimeterMm);
    }
}
