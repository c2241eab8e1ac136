using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class NewTests : IDisposable
{
    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void It_writes_a_model_that_checks_clean_of_stops(string model)
    {
        shell.Run("new", "my.toml", "--model", model).Ended(0);
        Assert.Equal(["my.toml"], shell.Names());
        Assert.Equal(StartingFile.Text(model), File.ReadAllText(shell.PathOf("my.toml")));
        shell.Run("check", "my.toml").Ended(0);
    }

    [Fact]
    public void In_spanish_the_file_is_spanish()
    {
        shell.Run("new", "mia.toml", "--language", "es", "--all").Ended(0);
        string text = File.ReadAllText(shell.PathOf("mia.toml"));
        Assert.Contains("Longitud de la caja", text, StringComparison.Ordinal);
        Assert.Contains("language = \"es\"", text, StringComparison.Ordinal);
        shell.Run("check", "mia.toml").Ended(0);
    }

    [Fact]
    public void It_never_writes_over_a_file_unless_told_to()
    {
        shell.Write("my.toml", "mine");
        Outcome outcome = shell.Run("new", "my.toml").Ended(2);
        Assert.Equal(
            "'my.toml' is there already. With --force it is written over.\n",
            outcome.Error
        );
        Assert.Equal("mine", File.ReadAllText(shell.PathOf("my.toml")));
        shell.Run("new", "my.toml", "--force").Ended(0);
        Assert.StartsWith(
            "# Heron",
            File.ReadAllText(shell.PathOf("my.toml")),
            StringComparison.Ordinal
        );
        Assert.Equal(["my.toml"], shell.Names());
    }

    [Fact]
    public void A_folder_is_no_file() =>
        Assert.Contains(
            "is a folder",
            shell.Run("new", ".", "--force").Ended(2).Error,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("none/my.toml")]
    [InlineData("plain/my.toml")]
    [InlineData("/proc/my.toml")]
    public void Where_nothing_can_be_written_it_is_an_outside_failure(string path)
    {
        shell.Write("plain", "a file, no folder");
        Outcome outcome = shell.Run("new", path).Ended(3);
        Assert.Equal("", outcome.Out);
        Assert.Single(outcome.Error.TrimEnd('\n').Split('\n'));
        Assert.Equal(["plain"], shell.Names());
    }
}
