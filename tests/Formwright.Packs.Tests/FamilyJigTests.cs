using System.Text.Json;
using Formwright.Design;
using Formwright.Instrument;
using Formwright.Jigs.Brackets;
using Formwright.Jigs.Parts;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

public sealed class FamilyJigTests
{
    private static readonly Lazy<FamilyJig> Family = new(() =>
    {
        InstrumentDesign[] designs =
        [
            .. new[] { "heron", "dunlin", "plover" }.Select(model =>
                DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!
            ),
        ];
        Guitar[] guitars = [.. designs.Select(design => Guitar.Build(design).Guitar!)];
        return new FamilyJig(JigMaker.Of(guitars, designs[0].Jig), designs);
    });

    [Fact]
    public void The_folder_holds_a_setting_sheet_for_each_board_bracket_and_parts()
    {
        string folder = Path.Combine(Directory.CreateTempSubdirectory().FullName, "jig");
        PackResult result = Family.Value.Write(folder);
        string[] files = [.. result.Manifest!.Files.Select(file => file.Path)];
        foreach (
            string file in new[]
            {
                "sheets/01-jig-board.pdf",
                "sheets/02-jig-bracket.pdf",
                "sheets/05-jig-setting-3.pdf",
                "tiles/03-jig-setting-1-a4.pdf",
                "parts/jig-board.dxf",
                "parts/jig-bracket-bottom.dxf",
                "report.json",
                "slots.toml",
            }
        )
        {
            Assert.Contains(file, files);
            Assert.True(new FileInfo(Path.Combine(folder, file)).Length > 100);
        }

        using JsonDocument report = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(folder, "report.json"))
        );
        Assert.Equal(3, report.RootElement.GetProperty("instruments").GetArrayLength());
        Assert.Equal(
            10,
            result.Manifest.Files.First(file => file.Part == "jig-bracket-bottom").Quantity
        );
    }

    [Fact]
    public void Its_slots_can_be_put_into_a_design_and_hold_it_as_well()
    {
        FamilyJig family = Family.Value;
        string text =
            File.ReadAllText(Repository.PathOf("examples", "plover.toml"))
            + "\n[jig]\nmake = true\n\n"
            + family.SlotsText;
        DesignReading reading = DesignText.Parse(text, "plover.toml");
        Assert.Empty(reading.Diagnostics);
        Study study = Study.Of(reading.Design!, builds: 0);
        JigPlan plan = study.Tooling!.Jig!;
        Assert.True(plan.IsGiven);
        Assert.True(plan.LargestGapMm <= plan.Design.LargestGapMm);
        Assert.NotNull(study.Report.Jig);
        Assert.Contains(study.Sheets(), sheet => sheet.Id == "jig-setting");
        Assert.False(study.IsStopped);
    }

    [Fact]
    public void Its_cut_files_read_without_an_error_and_have_their_areas()
    {
        foreach ((Part part, JsonElement file) in CutFiles.Read(Family.Value.Plan.Parts))
        {
            CutFiles.CheckAreas(part, file, toleranceMm2: 0.05);
        }
    }
}
