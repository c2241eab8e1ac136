using System.Text.Json;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Jigs.Steps;
using Formwright.Packs.Report;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>Every gate is a figure that stands elsewhere: in the report, or in the design.</summary>
public sealed class OrderReportTests
{
    [Theory]
    [InlineData(ReliefMethod.Carved)]
    [InlineData(ReliefMethod.CorkOverlay)]
    [InlineData(ReliefMethod.PlywoodOverlay)]
    public void Every_gate_refers_to_a_figure_that_stands_there(ReliefMethod method)
    {
        InstrumentDesign design = DesignText
            .Load(Repository.PathOf("examples", "heron.toml"))
            .Design!;
        Study study = Study.Of(
            design with
            {
                Workboard = design.Workboard with { Relief = method },
                Jig = design.Jig with { Make = true },
            }
        );
        using JsonDocument report = JsonDocument.Parse(ReportJson.Write(study.Report));
        string[] keys = [.. DesignText.Keys().Select(spec => spec.Path)];
        int gates = 0;
        foreach (Gate gate in study.Order!.Steps.SelectMany(step => step.Gates))
        {
            gates++;
            if (gate.Figure.Reference.StartsWith('/'))
            {
                double there = At(report.RootElement, gate.Figure.Reference).GetDouble();
                Assert.Equal(gate.Figure.Value, there, 1e-6);
            }
            else
            {
                Assert.Contains(gate.Figure.Reference, keys);
            }
        }

        Assert.True(gates > 20);
    }

    [Fact]
    public void The_order_of_work_is_json_of_its_own()
    {
        Study study = Study.Of(
            DesignText.Load(Repository.PathOf("examples", "plover.toml")).Design!
        );
        using JsonDocument json = JsonDocument.Parse(
            ReportJson.Write(OrderReport.Of(study.Order!))
        );
        Dictionary<string, int> numbers = [];
        foreach (JsonElement step in json.RootElement.GetProperty("steps").EnumerateArray())
        {
            foreach (JsonElement need in step.GetProperty("needs").EnumerateArray())
            {
                Assert.True(numbers.ContainsKey(need.GetString()!));
            }

            numbers.Add(step.GetProperty("id").GetString()!, step.GetProperty("number").GetInt32());
            foreach (JsonElement care in step.GetProperty("cautions").EnumerateArray())
            {
                Assert.NotEqual("", care.GetProperty("source").GetString());
            }
        }

        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers.Values);
    }

    // RFC 6901, as far as the report needs it: no key of it holds a tilde or a slash.
    private static JsonElement At(JsonElement root, string pointer)
    {
        foreach (string part in pointer.Split('/').Skip(1))
        {
            root = int.TryParse(part, out int index) ? root[index] : root.GetProperty(part);
        }

        return root;
    }
}
