using Formwright.Testing;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class BoardCheckTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Theory]
    [InlineData("nut=1.9/1.6,fret5=1.1/0.9", 1, "Shim under the neck")]
    [InlineData("nut=1.1", 1, "Or wedge the body")]
    [InlineData("nut=1.55/1.5", 0, "nut: 1.50 ± 0.20")]
    public void The_gate_ends_as_the_board_is(string measured, int status, string said)
    {
        Outcome outcome = Of(measured);
        outcome.Ended(status);
        Assert.Contains(said, outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_is_none_is_a_fault_of_the_input() => Of("nutt=1.9").Ended(2);

    [Fact]
    public void The_shim_is_drawn()
    {
        string sheet = shell.PathOf("shim.pdf");
        Of("nut=1.9/1.6", "--sheet", sheet).Ended(1);
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(sheet)[..4]);
    }

    private static Outcome Of(string measured, params string[] more) =>
        Shell.Here([
            "--language",
            "en",
            "board-check",
            Repository.PathOf("examples", "heron.toml"),
            "--measured",
            measured,
            .. more,
        ]);
}
