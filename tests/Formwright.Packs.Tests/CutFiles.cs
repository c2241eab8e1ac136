using System.Text.Json;
using Formwright.Jigs.Parts;
using Formwright.Sheets.Cutting;
using Formwright.Testing;
using Formwright.Writers;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>Cut files as an independent reader (ezdxf) finds them.</summary>
internal static class CutFiles
{
    /// <summary>Writes each part as DXF and has it read; asserts that no file has an error.</summary>
    /// <returns>What was read of each part.</returns>
    public static IReadOnlyList<(Part Part, JsonElement File)> Read(IEnumerable<Part> parts)
    {
        (Part Part, string Path)[] written =
        [
            .. parts.Select(part =>
            {
                string path = Tools.TempFile(".dxf");
                File.WriteAllText(path, DxfWriter.Write(CutParts.Of(part)));
                return (part, path);
            }),
        ];
        string script = Repository.PathOf("tests", "Formwright.Packs.Tests", "read_dxf.py");
        using JsonDocument read = JsonDocument.Parse(
            Tools.Run("/usr/bin/python3", [script, .. written.Select(each => each.Path)])
        );
        (Part Part, JsonElement File)[] files =
        [
            .. written.Select(each => (each.Part, read.RootElement.GetProperty(each.Path).Clone())),
        ];
        Assert.All(files, each => Assert.Empty(each.File.GetProperty("errors").EnumerateArray()));
        return files;
    }

    /// <summary>The areas that the loops of a file enclose, mm².</summary>
    public static IEnumerable<double> AreasMm2(JsonElement file) =>
        file.GetProperty("areas").EnumerateArray().Select(area => area[2].GetDouble());

    /// <summary>Asserts that a file's loops enclose the areas of the part's edges.</summary>
    public static void CheckAreas(Part part, JsonElement file, double toleranceMm2)
    {
        double[] expected =
        [
            .. part
                .Insides.Concat(part.Pockets.Select(pocket => pocket.Edge))
                .Append(part.Outside)
                .Select(edge => ArcPaths.AreaMm2(edge))
                .Order(),
        ];
        double[] found = [.. AreasMm2(file).Order()];
        Assert.Equal(expected.Length, found.Length);
        Assert.All(
            expected.Zip(found),
            pair => Assert.Equal(pair.First, pair.Second, toleranceMm2)
        );
    }
}
