using Formwright.Design;
using Formwright.Packs.Report;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>What a study takes over from an earlier one saves time and changes nothing.</summary>
public sealed class DraggedStudyTests
{
    private static readonly string Heron = File.ReadAllText(
        Repository.PathOf("examples", "heron.toml")
    );

    [Fact]
    public void The_study_after_a_drag_is_that_of_the_design_alone()
    {
        Study before = Study.Of(Of("368"));
        InstrumentDesign dragged = Of("371.5");
        Study passing = Study.Of(dragged, before, builds: 100);
        Assert.NotSame(before.Tooling, passing.Tooling);

        Study rest = Study.Of(dragged, passing);
        Assert.Same(passing.Tooling, rest.Tooling);
        string alone = ReportJson.Write(Study.Of(Of("371.5")).Report);
        Assert.Equal(alone, ReportJson.Write(rest.Report));
        Assert.NotEqual(alone, ReportJson.Write(before.Report));
    }

    [Fact]
    public void Tooling_is_not_taken_from_another_design()
    {
        Study before = Study.Of(Of("368"));
        Study after = Study.Of(Of("380"), before);
        Assert.NotSame(before.Tooling, after.Tooling);
        Assert.Equal(ReportJson.Write(Study.Of(Of("380")).Report), ReportJson.Write(after.Report));
    }

    private static InstrumentDesign Of(string lowerBout) =>
        DesignText
            .Parse(DesignEdit.Set(Heron, "outline.lower_bout.width", lowerBout), "heron")
            .Design!;
}
