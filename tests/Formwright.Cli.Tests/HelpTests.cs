using Xunit;

namespace Formwright.Cli.Tests;

public sealed class HelpTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void Help_says_what_it_can_do()
    {
        string text = shell.Run("--help").Ended(0).Out;
        foreach (
            string word in (string[])
                ["new", "check", "report", "pack", "serve", "--language", "Exit status"]
        )
        {
            Assert.Contains(word, text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("new", "--model", "--force")]
    [InlineData("check", "FILE…", "--language")]
    [InlineData("report", "FILE", "--help")]
    [InlineData("pack", "--out FOLDER", "whole or absent")]
    [InlineData("serve", "--no-browser", "--share")]
    public void Every_command_explains_itself(string command, string one, string two)
    {
        string text = Shell.Here(command, "--help").Ended(0).Out;
        Assert.Contains(one, text, StringComparison.Ordinal);
        Assert.Contains(two, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_speaks_spanish() =>
        Assert.Contains(
            "Uso: formwright pack ARCHIVO",
            Shell.Here("pack", "--help", "--language", "es").Ended(0).Out,
            StringComparison.Ordinal
        );

    [Fact]
    public void The_version_is_one_line() =>
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\n$", Shell.Here("--version").Ended(0).Out);

    [Theory]
    [InlineData("'chek' is not understood here. Did you mean 'check'?", "chek")]
    [InlineData(
        "'--modle' is not understood here. Did you mean '--model'?",
        "new",
        "a.toml",
        "--modle=heron"
    )]
    [InlineData("FILE is missing.", "new")]
    [InlineData("FILE is missing.", "check")]
    [InlineData("FILE is missing.", "report")]
    [InlineData("--out is missing.", "pack", "a.toml")]
    [InlineData("After --out something is missing.", "pack", "a.toml", "--out")]
    [InlineData(
        "There is no model 'wren'; there are dunlin, heron, plover.",
        "new",
        "a.toml",
        "--model",
        "wren"
    )]
    [InlineData(
        "There is no model 'plovr'; there are dunlin, heron, plover. Did you mean 'plover'?",
        "new",
        "a.toml",
        "--model",
        "plovr"
    )]
    [InlineData(
        "'fr' is no language here; there are en and es.",
        "check",
        "a.toml",
        "--language",
        "fr"
    )]
    [InlineData("'b.toml' is not understood here.", "report", "a.toml", "b.toml")]
    public void A_wrong_command_line_is_wrong_input(string line, params string[] args)
    {
        Outcome outcome = Shell.Here(args).Ended(2);
        Assert.Equal("", outcome.Out);
        Assert.StartsWith(line + "\nUsage: formwright ", outcome.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Names());
    }

    [Fact]
    public void A_wrong_command_line_is_told_in_spanish() =>
        Assert.StartsWith(
            "'chek' no se entiende aquí. ¿Quiso decir 'check'?\nUso: ",
            Shell.Here("--language", "es", "chek").Ended(2).Error,
            StringComparison.Ordinal
        );
}
