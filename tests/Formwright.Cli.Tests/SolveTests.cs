using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class SolveTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Theory]
    [InlineData("ramp", "neck.ramp")]
    [InlineData("dome", "dome.height")]
    [InlineData("saddle", "saddle.")]
    [InlineData("fingerboard", "fingerboard.")]
    [InlineData("action", "action.")]
    public void Every_unknown_prints_its_figure_and_both_chains(string unknown, string key)
    {
        shell.Write("heron.toml", DesignModels.TextOf("heron"));
        Outcome outcome = Shell.Here(
            "--language",
            "en",
            "solve",
            shell.PathOf("heron.toml"),
            "--for",
            unknown
        );
        Assert.Contains(key, outcome.Out, StringComparison.Ordinal);
        Assert.Contains("On the board", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Strung", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Written_into_the_file_the_answer_solves_to_itself_and_comments_stay()
    {
        string text = DesignModels.TextOf("heron");
        shell.Write("heron.toml", text);
        shell.Run("solve", "heron.toml", "--for", "ramp", "--write").Ended(0);
        string written = File.ReadAllText(shell.PathOf("heron.toml"));
        Assert.Equal(
            text.Split('\n').Count(line => line.Contains('#', StringComparison.Ordinal)),
            written.Split('\n').Count(line => line.Contains('#', StringComparison.Ordinal))
        );
        double ramp = DesignText.Parse(written, "x").Design!.Neck.RampMm;
        // Solved again, the answer is the figure that stands there, to the hundredth that it was written with.
        Outcome again = Shell.Here(
            "--language",
            "en",
            "solve",
            shell.PathOf("heron.toml"),
            "--for",
            "ramp"
        );
        Assert.Contains(
            FormattableString.Invariant($"neck.ramp = {ramp:0.00} mm (it was {ramp:0.00})"),
            again.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(["heron.toml"], shell.Names());
    }

    [Fact]
    public void An_unknown_that_is_none_is_a_fault_of_usage() =>
        Shell.Here("solve", "heron.toml", "--for", "neckangle").Ended(2);
}
