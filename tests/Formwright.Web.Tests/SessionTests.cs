using Formwright.Design;
using Formwright.Packs;
using Formwright.Web.Designs;
using Microsoft.Extensions.Logging.Abstractions;

namespace Formwright.Web.Tests;

public sealed class SessionTests : IDisposable
{
    private static readonly Behind Behind = new(NullLogger<Behind>.Instance);
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-session-{Guid.NewGuid():N}")
    );

    public SessionTests() => folder.Write("Heron", DesignModels.TextOf("heron"));

    public void Dispose() => Directory.Delete(folder.Root, recursive: true);

    [Fact]
    public void AnEditIsWrittenWithCommentsAndCanBeUndoneAndRedone()
    {
        using DesignSession session = new(folder, "Heron", Behind);
        Assert.Empty(session.Set("outline.waist.width", "240"));
        session.Save();
        string text = File.ReadAllText(folder.PathOf("Heron"));
        Assert.Equal(
            DesignModels
                .TextOf("heron")
                .Replace("width = 236", "width = 240", StringComparison.Ordinal),
            text
        );
        session.Undo();
        Assert.Equal(236, session.State.Design!.Outline.Waist.WidthMm);
        session.Redo();
        Assert.Equal(240, session.State.Design!.Outline.Waist.WidthMm);
        Assert.False(session.State.CanRedo);
    }

    [Fact]
    public void ADragIsUndoneAsOne()
    {
        using DesignSession session = new(folder, "Heron", Behind);
        for (int i = 1; i <= 20; i++)
        {
            session.Set("outline.waist.width", $"{236 + i}", "one");
        }

        session.Undo();
        Assert.Equal(236, session.State.Design!.Outline.Waist.WidthMm);
        Assert.False(session.State.CanUndo);
        // Its last move may come late.
        Assert.Empty(session.Set("outline.waist.width", "257", "one"));
        Assert.Equal(236, session.State.Design!.Outline.Waist.WidthMm);
        Assert.Empty(session.Set("outline.waist.width", "240", "another"));
        Assert.Equal(240, session.State.Design!.Outline.Waist.WidthMm);
    }

    [Fact]
    public void AValueThatDoesNotReadChangesNothing()
    {
        using DesignSession session = new(folder, "Heron", Behind);
        Assert.NotEmpty(session.Set("outline.waist.width", "5"));
        Assert.Equal(DesignModels.TextOf("heron"), session.State.Text);
        Assert.False(session.State.CanUndo);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AClashKeepsBothUntilItIsSettled(bool keepOurs)
    {
        using DesignSession session = new(folder, "Heron", Behind);
        string theirs = DesignModels
            .TextOf("heron")
            .Replace("width = 236", "width = 230", StringComparison.Ordinal);
        session.Set("outline.waist.width", "240");
        File.WriteAllText(folder.PathOf("Heron"), theirs);
        session.LookAtDisk();
        session.Save();
        Assert.Equal(theirs, session.State.Theirs);
        Assert.Equal(theirs, File.ReadAllText(folder.PathOf("Heron")));
        session.Settle(keepOurs);
        Assert.Null(session.State.Theirs);
        Assert.Equal(
            keepOurs ? 240 : 230,
            DesignText.Load(folder.PathOf("Heron")).Design!.Outline.Waist.WidthMm
        );
        session.Undo();
        Assert.Equal(keepOurs ? 230 : 240, session.State.Design!.Outline.Waist.WidthMm);
    }

    [Fact]
    public void ABrokenFileKeepsTheLastDesign()
    {
        using DesignSession session = new(folder, "Heron", Behind);
        File.WriteAllText(folder.PathOf("Heron"), "[outline]\nbody_lenght = 488\n");
        session.LookAtDisk();
        Assert.NotEmpty(session.State.Reading.Diagnostics);
        Assert.Equal(488, session.State.Design!.Outline.BodyLengthMm);
        session.Undo();
        session.Save();
        Assert.Equal(DesignModels.TextOf("heron"), File.ReadAllText(folder.PathOf("Heron")));
    }

    [Fact]
    public async Task EverythingElseFollowsTheOutline()
    {
        using ManualResetEventSlim isLookedAt = new();
        using DesignSession session = new(
            folder,
            "Heron",
            Behind,
            (design, earlier, builds) =>
            {
                if (earlier is not null)
                {
                    isLookedAt.Wait();
                }

                return Study.Of(design, earlier, builds);
            }
        );
        await session.WhenSettled();
        session.Set("outline.waist.width", "240");
        Assert.True(session.State.IsPending);
        Assert.Equal(120, session.State.Outline!.Outline!.WidthAt(190) / 2, 3);
        isLookedAt.Set();
        await session.WhenSettled();
        Assert.False(session.State.IsPending);
        Assert.Equal(session.State.Design, session.State.Study!.Design);
    }

    [Theory]
    [InlineData("../x")]
    [InlineData("a/b")]
    [InlineData("a\\b")]
    [InlineData("..")]
    [InlineData(".bin")]
    [InlineData("")]
    [InlineData("a\n")]
    [InlineData("a\0")]
    public void ANameIsNeverAPath(string name)
    {
        Assert.False(DesignName.IsValid(name));
        Assert.Throws<ArgumentException>(() => folder.PathOf(name));
        Assert.False(folder.Exists(name));
    }

    [Fact]
    public void ALinkIsNoDesign()
    {
        string outside = Path.GetTempFileName();
        File.CreateSymbolicLink(Path.Combine(folder.Root, "link.toml"), outside);
        Assert.DoesNotContain("link", folder.Names());
        using DesignSessions sessions = new(folder, Behind);
        Assert.Null(sessions.Open("link"));
        File.Delete(outside);
    }
}
