using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.Json;
using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class PackTests : IDisposable
{
    private readonly Shell shell = new();

    public PackTests() => shell.Write("plover.toml", DesignModels.TextOf("plover"));

    public void Dispose() => shell.Dispose();

    [Fact]
    public void A_pack_is_whole_and_the_same_in_any_language_of_the_person()
    {
        shell.Run("pack", "plover.toml", "--out", "one").Ended(0);
        shell.Run("pack", "plover.toml", "--out", "two", "--language", "es").Ended(0);
        Assert.Equal(["one", "plover.toml", "two"], shell.Names());
        using JsonDocument manifest = JsonDocument.Parse(
            File.ReadAllText(shell.PathOf("one/pack.json"))
        );
        JsonElement[] files = [.. manifest.RootElement.GetProperty("files").EnumerateArray()];
        Assert.NotEmpty(files);
        foreach (JsonElement file in files)
        {
            string path = file.GetProperty("path").GetString()!;
            byte[] bytes = File.ReadAllBytes(shell.PathOf("one/" + path));
            Assert.Equal(
                file.GetProperty("sha256").GetString(),
                Convert.ToHexStringLower(SHA256.HashData(bytes))
            );

            // PDFs carry random ids; their pages are compared where they are made.
            if (!path.EndsWith(".pdf", StringComparison.Ordinal))
            {
                Assert.True(
                    bytes.AsSpan().SequenceEqual(File.ReadAllBytes(shell.PathOf("two/" + path))),
                    path
                );
            }
        }

        int onDisk = Directory
            .EnumerateFiles(shell.PathOf("one"), "*", SearchOption.AllDirectories)
            .Count();
        Assert.Equal(files.Length + 1, onDisk);
    }

    [Fact]
    public void A_stop_writes_nothing_and_leaves_an_earlier_pack_alone()
    {
        Directory.CreateDirectory(shell.PathOf("out"));
        shell.Write("out/pack.json", "{}");
        shell.Write(
            "odd.toml",
            DesignEdit.Set(DesignModels.TextOf("plover"), "outline.waist.width", "400")
        );
        Outcome outcome = shell.Run("pack", "odd.toml", "--out", "out").Ended(1);
        Assert.Equal("", outcome.Out);
        Assert.EndsWith(
            "Nothing was written: first change what can't be built.\n",
            outcome.Error,
            StringComparison.Ordinal
        );
        Assert.Equal("{}", File.ReadAllText(shell.PathOf("out/pack.json")));
        Assert.Equal(["odd.toml", "out", "plover.toml"], shell.Names());
    }

    [Fact]
    public void Wrong_input_writes_nothing()
    {
        shell.Write("bad.toml", "nonsense");
        shell.Run("pack", "bad.toml", "--out", "out").Ended(2);
        Assert.False(Directory.Exists(shell.PathOf("out")));
    }

    [Fact]
    public void A_folder_with_other_files_is_not_replaced()
    {
        Directory.CreateDirectory(shell.PathOf("photos"));
        shell.Write("photos/me.jpg", "x");
        shell.Run("pack", "plover.toml", "--out", "photos").Ended(2);
        Assert.Equal("x", File.ReadAllText(shell.PathOf("photos/me.jpg")));
        shell.Run("pack", "plover.toml", "--out", "plover.toml").Ended(2);
        Assert.Equal(["photos", "plover.toml"], shell.Names());
    }

    [Theory]
    [InlineData("plover.toml/out")]
    [InlineData("/proc/formwright/out")]
    [InlineData("/dev/null/out")]
    public void Where_nothing_can_be_written_it_is_an_outside_failure(string folder)
    {
        Outcome outcome = shell.Run("pack", "plover.toml", "--out", folder).Ended(3);
        Assert.DoesNotContain("files.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["plover.toml"], shell.Names());
    }

    [Fact]
    public void An_interruption_leaves_nothing_half_written()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "no signals here");
        using Process process = shell.Start("pack", "plover.toml", "--out", "out");
        while (!process.HasExited && shell.Names() is ["plover.toml"])
        {
            Thread.Sleep(1);
        }

        using Process kill = Process.Start("kill", ["-INT", $"{process.Id}"]);
        kill.WaitForExit();
        process.WaitForExit();

        // It may have been quicker than the signal; then all of it is there.
        Assert.Contains(process.ExitCode, (int[])[0, 3]);
        Assert.Equal(
            process.ExitCode == 0 ? ["out", "plover.toml"] : (string[])["plover.toml"],
            shell.Names()
        );
    }
}
