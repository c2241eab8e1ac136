using Formwright.Design;
using Formwright.Web.Designs;

namespace Formwright.Web.Tests;

public sealed class DesignFolderTests : IDisposable
{
    private static readonly string Heron = DesignModels.TextOf("heron");
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-folder-{Guid.NewGuid():N}")
    );

    public void Dispose() => Directory.Delete(folder.Root, recursive: true);

    [Fact]
    public void WhatIsBinnedComesBackUnderANameThatIsFree()
    {
        folder.Write("Heron 2", Heron);
        folder.Bin("Heron 2");
        Assert.Empty(folder.Names());
        BinnedDesign binned = Assert.Single(folder.Binned());
        Assert.Equal("Heron 2", binned.Name);
        Assert.True((DateTime.Now - binned.At).Duration() < TimeSpan.FromMinutes(1));

        folder.Write("Heron 2", Heron + "# a later one");
        Assert.Equal("Heron 2 2", folder.PutBack(binned.File));
        Assert.Empty(folder.Binned());
        Assert.Equal(Heron, File.ReadAllText(folder.PathOf("Heron 2 2")));
        Assert.Equal(Heron + "# a later one", File.ReadAllText(folder.PathOf("Heron 2")));
    }

    [Theory]
    [InlineData("../Heron 20260101-120000")]
    [InlineData("Heron")]
    [InlineData("")]
    public void NothingElseComesOutOfTheBin(string file)
    {
        folder.Write("Heron", Heron);
        folder.Bin("Heron");
        folder.Write("Heron 20260101-120000", Heron);
        // Not by the bin's hand, and a link.
        string bin = Path.Combine(folder.Root, DesignFolder.BinName);
        File.WriteAllText(Path.Combine(bin, "Heron.toml"), Heron);
        File.CreateSymbolicLink(
            Path.Combine(bin, "Link 20260101-120000.toml"),
            folder.PathOf("Heron 20260101-120000")
        );
        Assert.Equal(["Heron"], folder.Binned().Select(each => each.Name));
        Assert.Null(folder.PutBack(file));
        Assert.Null(folder.PutBack("Link 20260101-120000"));
        Assert.Equal(["Heron 20260101-120000"], folder.Names());
    }

    [Fact]
    public void NamesStandAsAMakerCounts()
    {
        foreach (string name in (string[])["Heron 10", "heron 2", "Dunlin", "Heron 1"])
        {
            folder.Write(name, Heron);
        }

        Assert.Equal(["Dunlin", "Heron 1", "heron 2", "Heron 10"], folder.Names());
    }
}
