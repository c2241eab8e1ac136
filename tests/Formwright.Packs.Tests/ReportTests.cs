using System.Text.Json;
using Formwright.Design;
using Formwright.Packs.Report;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

public sealed class ReportTests
{
    [Fact]
    public void The_schema_in_the_documentation_is_that_of_the_code() =>
        Approved.CheckFile(
            Repository.PathOf("docs", "reference", "report.schema.json"),
            ReportJson.Schema()
        );

    [Fact]
    public void So_is_that_of_the_commands_about_tracings() =>
        Approved.CheckFile(
            Repository.PathOf("docs", "reference", "trace.schema.json"),
            ReportJson.TraceSchema()
        );

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void The_report_holds_the_figures_under_their_names(string model)
    {
        Study study = Study.Of(
            DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!
        );
        using JsonDocument json = JsonDocument.Parse(ReportJson.Write(study.Report));
        JsonElement root = json.RootElement;
        JsonElement outline = root.GetProperty("outline");
        Assert.True(outline.GetProperty("half_perimeter_mm").GetDouble() > 500);
        Assert.True(outline.GetProperty("area_mm2").GetDouble() > 80_000);
        Assert.InRange(outline.GetProperty("curvature_pieces").GetInt32(), 3, 8);
        Assert.True(outline.GetProperty("tightest_radius_mm").GetDouble() > 40);
        JsonElement row = outline.GetProperty("table")[1];
        Assert.Equal(10, row.GetProperty("u_mm").GetDouble());
        Assert.True(row.GetProperty("width_mm").GetDouble() > 0);
        Assert.True(row.TryGetProperty("curvature_per_mm", out _));
        Assert.Equal(
            study.Design.Dome.HeightMm,
            root.GetProperty("dome").GetProperty("max_mm").GetDouble(),
            1e-6
        );
        Assert.True(
            root.GetProperty("dome")
                .GetProperty("centreline")[20]
                .GetProperty("height_mm")
                .GetDouble() > 0
        );
        JsonElement gap = root.GetProperty("workboard").GetProperty("gap_table")[0];
        Assert.Equal("nut", gap.GetProperty("place").GetString());
        Assert.Equal(study.Design.Neck.RampMm, gap.GetProperty("gap_mm").GetDouble());
        Assert.Equal(3, root.GetProperty("mould").GetProperty("layers").GetInt32());
        JsonElement fastener = root.GetProperty("mould").GetProperty("fasteners")[0];
        Assert.Equal("dowel", fastener.GetProperty("kind").GetString());
        foreach (string name in new[] { "x_mm", "y_b_mm", "diameter_mm", "edge_distance_mm" })
        {
            Assert.Equal(JsonValueKind.Number, fastener.GetProperty(name).ValueKind);
        }

        JsonElement wood = root.GetProperty("wood");
        Assert.InRange(wood.GetProperty("thickness_for_both_mm").GetDouble(), 1, 5);
        Assert.True(wood.GetProperty("board_modulus_long_mpa").GetDouble() > 5000);
        Assert.NotEqual(0, wood.GetProperty("arches").GetArrayLength());
        Assert.NotEqual(0, wood.GetProperty("movements").GetArrayLength());
        Assert.True(root.GetProperty("ribs").GetProperty("kerf_step_mm").GetDouble() > 2);
        JsonElement plate = root.GetProperty("plate");
        Assert.True(plate.GetProperty("feeds_the_action").GetBoolean());
        Assert.Equal(
            study.Action!.Model.Figures.BridgeRiseMm,
            plate.GetProperty("bridge_rise_mm").GetDouble(),
            1e-5
        );
        Assert.True(plate.GetProperty("bridge_rise_uncertainty_mm").GetDouble() > 0);
        Assert.InRange(plate.GetProperty("bridge_rotation_deg").GetDouble(), 0.05, 2);
        Assert.Equal(20, plate.GetProperty("modes").GetArrayLength());
        Assert.True(plate.GetProperty("modes_converged").GetBoolean());
        Assert.True(plate.GetProperty("modes")[0].GetProperty("frequency_hz").GetDouble() > 80);
        Assert.True(
            plate.GetProperty("low_hinged_hz").GetDouble() < plate.GetProperty("air_hz").GetDouble()
        );

        foreach (JsonElement finding in root.GetProperty("findings").EnumerateArray())
        {
            Assert.NotEqual("", finding.GetProperty("message").GetString());
            Assert.NotEqual("stop", finding.GetProperty("severity").GetString());
        }
    }
}
