using System.Security.Cryptography;
using System.Text.Json;
using Formwright.Design;
using Formwright.Testing;
using Xunit;

namespace Formwright.Packs.Tests;

public sealed class PackWriterTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("formwright").FullName;

    [Fact]
    public void A_pack_is_whole_and_its_manifest_names_every_file_with_its_hash()
    {
        string target = Path.Combine(folder, "heron");
        PackResult result = Write("heron", target);
        Assert.Null(result.Fault);
        using JsonDocument manifest = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(target, "pack.json"))
        );
        Dictionary<string, JsonElement> files = manifest
            .RootElement.GetProperty("files")
            .EnumerateArray()
            .ToDictionary(file => file.GetProperty("path").GetString()!);
        string[] onDisk =
        [
            .. Directory
                .EnumerateFiles(target, "*", SearchOption.AllDirectories)
                .Select(path => Path.GetRelativePath(target, path).Replace('\\', '/'))
                .Where(path => path != "pack.json"),
        ];
        Assert.Equal(onDisk.Order(), files.Keys.Order());
        foreach (string path in onDisk)
        {
            byte[] bytes = File.ReadAllBytes(Path.Combine(target, path));
            Assert.NotEmpty(bytes);
            Assert.Equal(
                Convert.ToHexStringLower(SHA256.HashData(bytes)),
                files[path].GetProperty("sha256").GetString()
            );
        }

        JsonElement layer = files["parts/mould-bottom-bass.dxf"];
        Assert.Equal("part", layer.GetProperty("kind").GetString());
        Assert.Equal(1, layer.GetProperty("quantity").GetInt32());
        Assert.Equal(18, layer.GetProperty("thickness_mm").GetDouble());
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder, ".*"));
    }

    [Fact]
    public void The_same_design_gives_the_same_bytes_but_for_pdf()
    {
        PackResult a = Write("plover", Path.Combine(folder, "a"));
        PackResult b = Write("plover", Path.Combine(folder, "b"));
        static string[] Hashes(PackResult result) =>
            [
                .. result
                    .Manifest!.Files.Where(f => !f.Path.EndsWith(".pdf", StringComparison.Ordinal))
                    .Select(f => f.Path + f.Sha256),
            ];
        Assert.Equal(Hashes(a), Hashes(b));
    }

    [Fact]
    public void An_earlier_pack_gives_way_and_a_foreign_folder_does_not()
    {
        string target = Path.Combine(folder, "plover");
        Assert.Null(Write("plover", target).Fault);
        File.WriteAllText(Path.Combine(target, "stale.txt"), "old");
        Assert.Null(Write("plover", target).Fault);
        Assert.False(File.Exists(Path.Combine(target, "stale.txt")));

        string mine = Path.Combine(folder, "mine");
        Directory.CreateDirectory(mine);
        File.WriteAllText(Path.Combine(mine, "letter.txt"), "keep me");
        Assert.NotNull(Write("plover", mine).Fault);
        Assert.Equal("keep me", File.ReadAllText(Path.Combine(mine, "letter.txt")));
    }

    [Fact]
    public void Nothing_is_left_behind_when_the_folder_cannot_be_made()
    {
        string file = Path.Combine(folder, "file");
        File.WriteAllText(file, "");
        Assert.ThrowsAny<IOException>(() => Write("plover", Path.Combine(file, "pack")));
        Assert.Equal([file], Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void A_design_with_a_stop_writes_nothing()
    {
        string text = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        DesignReading reading = DesignText.Parse(
            DesignEdit.Set(text, "outline.waist.width", "300"),
            "heron.toml"
        );
        Study study = Study.Of(reading.Design!);
        Assert.True(study.IsStopped);
        PackResult result = PackWriter.Write(study, reading.Text, Path.Combine(folder, "no"));
        Assert.NotNull(result.Fault);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static PackResult Write(string model, string target)
    {
        DesignReading reading = DesignText.Load(Repository.PathOf("examples", $"{model}.toml"));
        return PackWriter.Write(Study.Of(reading.Design!), reading.Text, target);
    }
}
