using System.Text.RegularExpressions;
using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed partial class CheckTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void Diagnostics_go_to_the_error_stream_with_their_places()
    {
        shell.Write(
            "bad.toml",
            "[instrument]\nscale = \"18 parsecs\"\n[outline]\nbody_lenght = 488\n"
        );
        Outcome outcome = shell.Run("check", "bad.toml").Ended(2);
        Assert.Equal("", outcome.Out);
        string[] lines = outcome.Error.TrimEnd('\n').Split('\n');
        Assert.StartsWith(
            "bad.toml:2:9: \"18 parsecs\" has a unit",
            lines.Single(line => line.Contains("parsecs", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "bad.toml:4:1: 'outline.body_lenght' is no key",
            lines.Single(line => line.Contains("lenght", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_finding_tells_figure_limit_source_and_cure()
    {
        // Deeper than the soundboard's edge of 2.5 mm.
        shell.Write(
            "deep.toml",
            DesignEdit.Set(DesignModels.TextOf("heron"), "mould.rebate.depth", "3.25")
        );
        Outcome outcome = shell.Run("check", "deep.toml").Ended(1);
        Assert.Equal("", outcome.Error);
        Assert.StartsWith(
            "deep.toml: can't be built as it stands (1)\n",
            outcome.Out,
            StringComparison.Ordinal
        );
        Assert.Matches(@"  deep\.toml:\d+:\d+: .+ \[mould\.rebate-too-deep\]\n", outcome.Out);
        Assert.Contains(
            "    3.25 mm against a limit of 2.5 mm. ",
            outcome.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("    Change: ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("(mould.rebate.depth)", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_come_gravest_first_and_in_spanish_with_spanish_figures()
    {
        shell.Write(
            "deep.toml",
            DesignEdit.Set(DesignModels.TextOf("heron"), "mould.rebate.depth", "3.25")
        );
        string text = shell.Run("check", "deep.toml", "--language=es").Ended(1).Out;
        Assert.StartsWith(
            "deep.toml: no se puede construir tal como está (1)\n",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("3,25 mm frente a un límite de 2,5 mm.", text, StringComparison.Ordinal);
        int stop = text.IndexOf("mould.rebate-too-deep", StringComparison.Ordinal);
        int note = text.IndexOf("workboard.bar-unsupported", StringComparison.Ordinal);
        Assert.True(stop >= 0 && note > stop, text);
    }

    [Theory]
    [InlineData("outline.waist.width", "400")]
    [InlineData("outline.waist.at", "60")]
    [InlineData("outline.body_length", "300")]
    [InlineData("mould.rebate.width", "60")]
    public void What_cannot_be_built_is_a_finding(string key, string value)
    {
        shell.Write("odd.toml", DesignEdit.Set(DesignModels.TextOf("heron"), key, value));
        Outcome outcome = Shell.Here("check", shell.PathOf("odd.toml")).Ended(1);
        Assert.Contains(
            "odd.toml: can't be built as it stands",
            outcome.Out,
            StringComparison.Ordinal
        );
        Assert.DoesNotMatch(Unfilled(), outcome.Out);
    }

    [Fact]
    public void Of_several_files_the_worst_tells_the_status()
    {
        shell.Write("good.toml", DesignModels.TextOf("plover"));
        shell.Write(
            "deep.toml",
            DesignEdit.Set(DesignModels.TextOf("heron"), "mould.rebate.depth", "3.25")
        );
        shell.Write("bad.toml", "x");
        shell.Run("check", "good.toml", "deep.toml").Ended(1);
        Outcome outcome = shell
            .Run("check", "good.toml", "deep.toml", "bad.toml", "none.toml")
            .Ended(2);
        Assert.Contains("good.toml", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("deep.toml", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("bad.toml:1:1: ", outcome.Error, StringComparison.Ordinal);
        Assert.Contains(
            "none.toml:1:1: There is no file 'none.toml'.",
            outcome.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Files_that_are_no_designs_are_told_in_one_line()
    {
        byte[] noise = new byte[9999];
        new Random(7).NextBytes(noise);
        File.WriteAllBytes(shell.PathOf("noise"), noise);
        using (FileStream huge = File.Create(shell.PathOf("huge")))
        {
            huge.SetLength(4L << 30);
        }

        foreach (string name in (string[])["noise", "huge", "none", "."])
        {
            string error = shell.Run("check", name).Ended(2).Error;
            Assert.StartsWith($"{name}:1:1: ", error, StringComparison.Ordinal);
            Assert.Single(error.TrimEnd('\n').Split('\n'));
        }
    }

    // A place {0} that nothing was put into, or a figure that is no number.
    [GeneratedRegex(@"\{\d|NaN|∞")]
    private static partial Regex Unfilled();
}
