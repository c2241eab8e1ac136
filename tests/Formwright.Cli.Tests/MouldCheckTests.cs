using Formwright.Design;
using Formwright.Testing;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class MouldCheckTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void A_mould_fits_its_own_design_and_says_where_its_holes_come()
    {
        string text = Of(Model("heron"), Model("heron")).Ended(0).Out;
        Assert.Contains("fits as it is", text, StringComparison.Ordinal);
        Assert.Contains("on the bass side", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mould_a_little_off_fits_with_changes()
    {
        string file = shell.PathOf("old.toml");
        File.WriteAllText(
            file,
            DesignEdit.Set(File.ReadAllText(Model("heron")), "outline.lower_bout.width", "371")
        );
        string text = Of(Model("heron"), file).Ended(0).Out;
        Assert.Contains("fits with changes", text, StringComparison.Ordinal);
        Assert.Contains("Line the inner face", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mould_of_another_size_does_not()
    {
        string text = Of(Model("heron"), Model("plover")).Ended(1).Out;
        Assert.Contains("does not fit", text, StringComparison.Ordinal);
    }

    private static string Model(string name) => Repository.PathOf("examples", $"{name}.toml");

    private static Outcome Of(string design, string mould) =>
        Shell.Here("--language", "en", "mould-check", design, "--mould", mould);
}
