using System.Text.Json;
using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class ReportTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void It_is_json_and_nothing_else_in_any_language()
    {
        shell.Write("heron.toml", DesignModels.TextOf("heron"));
        Outcome english = shell.Run("report", "heron.toml").Ended(0);
        Outcome spanish = shell.Run("report", "heron.toml", "--language", "es").Ended(0);
        Assert.Equal("", english.Error);
        using JsonDocument en = JsonDocument.Parse(english.Out);
        using JsonDocument es = JsonDocument.Parse(spanish.Out);
        JsonElement outline = en.RootElement.GetProperty("outline");
        double half = outline.GetProperty("half_perimeter_mm").GetDouble();

        // More than the straight way along the body and across the lower bout, less than twice that.
        Assert.InRange(half, 488 + 184, 2 * (488 + 184));
        Assert.Equal(
            half,
            es.RootElement.GetProperty("outline").GetProperty("half_perimeter_mm").GetDouble()
        );
        foreach (string name in (string[])["dome", "workboard", "mould", "findings"])
        {
            Assert.True(en.RootElement.TryGetProperty(name, out _), name);
        }
    }

    [Fact]
    public void A_design_that_cannot_be_built_still_reports_why()
    {
        shell.Write(
            "odd.toml",
            DesignEdit.Set(DesignModels.TextOf("heron"), "outline.waist.width", "400")
        );
        using JsonDocument report = JsonDocument.Parse(
            shell.Run("report", "odd.toml").Ended(1).Out
        );
        Assert.Contains(
            report.RootElement.GetProperty("findings").EnumerateArray(),
            finding => finding.GetProperty("severity").GetString() == "stop"
        );
    }

    [Fact]
    public void Wrong_input_prints_no_json()
    {
        shell.Write("bad.toml", "[neck]\nramp = 1,5\n");
        Outcome outcome = shell.Run("report", "bad.toml").Ended(2);
        Assert.Equal("", outcome.Out);
        Assert.StartsWith("bad.toml:2:8: ", outcome.Error, StringComparison.Ordinal);
    }
}
