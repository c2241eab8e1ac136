using System.Text.Json;
using Formwright.Testing;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class JigTests : IDisposable
{
    private static readonly string[] Examples =
    [
        Repository.PathOf("examples", "heron.toml"),
        Repository.PathOf("examples", "dunlin.toml"),
        Repository.PathOf("examples", "plover.toml"),
    ];
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void A_family_is_told_with_its_bound_and_every_setting()
    {
        string text = Shell.Here(["--language", "en", "jig", .. Examples]).Ended(0).Out;
        Assert.Contains("5 slots on each side and 10 brackets", text, StringComparison.Ordinal);
        Assert.Contains("No arrangement has fewer", text, StringComparison.Ordinal);
        Assert.Contains("Plover: longest free piece", text, StringComparison.Ordinal);
        Assert.Contains("[[jig.slots]]", text, StringComparison.Ordinal);
        Assert.Contains("slot 5:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_gap_takes_fewer_slots()
    {
        using JsonDocument report = JsonDocument.Parse(
            Shell.Here(["jig", .. Examples, "--gap", "6 in", "--json"]).Ended(0).Out
        );
        JsonElement root = report.RootElement;
        Assert.Equal(152.4, root.GetProperty("allowed_gap_mm").GetDouble(), 1e-9);
        Assert.True(root.GetProperty("slots").GetArrayLength() < 5);
        Assert.True(root.GetProperty("largest_gap_mm").GetDouble() <= 152.4);
    }

    [Theory]
    [InlineData("--gap", "narrow")]
    [InlineData("--gap", "2")]
    public void A_gap_that_is_none_is_a_fault_of_the_input(string option, string value) =>
        Shell.Here("jig", Examples[0], option, value).Ended(2);

    [Fact]
    public void Files_are_written_whole()
    {
        string folder = shell.PathOf("jig");
        Shell.Here("jig", Examples[0], "--out", folder).Ended(0);
        Assert.True(File.Exists(Path.Combine(folder, "sheets", "03-jig-setting.pdf")));
        Assert.True(File.Exists(Path.Combine(folder, "pack.json")));
    }
}
