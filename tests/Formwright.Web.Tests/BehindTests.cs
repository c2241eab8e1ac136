using Bunit;
using Formwright.Design;
using Formwright.Drawing;
using Formwright.Packs;
using Formwright.Web.Components.Board;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Formwright.Web.Tests;

/// <summary>What goes wrong behind the page is told on the server and on the page, and stops nothing else.</summary>
public sealed class BehindTests : IDisposable
{
    private static readonly Reader English = Reader.Parse("en.mm.point.light");

    // A study takes a second; what is changed in it is changed in a copy.
    private static readonly Lazy<Study> Heron = new(() =>
        Study.Of(DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!)
    );

    private readonly ToldFaults faults = new();
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-behind-{Guid.NewGuid():N}")
    );
    private DesignSession? session;

    public BehindTests()
    {
        English.Apply();
        folder.Write("Heron", DesignModels.TextOf("heron"));
    }

    public void Dispose()
    {
        session?.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Fact]
    public async Task AStudyThatFailsIsToldAndStopsNoLaterOne()
    {
        session = new(
            folder,
            "Heron",
            new Behind(faults),
            (design, _, _) =>
                design.Outline.Waist.WidthMm == 240
                    ? throw new InvalidOperationException("no waist of 240")
                    : Heron.Value
        );
        await session.WhenSettled();
        session.Set("outline.waist.width", "240");
        await session.WhenSettled();
        Assert.Contains("no waist of 240", Assert.Single(faults.All));
        Assert.True(session.State.HasFailed);
        // Its figures are still those of an earlier design, and are shown as such.
        Assert.True(session.State.IsPending);

        session.Set("outline.waist.width", "241");
        Assert.False(session.State.HasFailed);
        await session.WhenSettled();
        Assert.False(session.State.HasFailed || session.State.IsPending);
        Assert.Same(Heron.Value, session.State.Study);
    }

    [Fact]
    public async Task APageThatOpensHasAFailedStudyTriedAgain()
    {
        int tries = 0;
        session = new(
            folder,
            "Heron",
            new Behind(faults),
            (_, _, _) => tries++ == 0 ? throw new InvalidOperationException("once") : Heron.Value
        );
        await session.WhenSettled();
        Assert.True(session.State.HasFailed);
        session.TryAgain();
        await session.WhenSettled();
        Assert.False(session.State.HasFailed);
        session.TryAgain();
        await session.WhenSettled();
        Assert.Equal(2, tries);
    }

    [Fact]
    public async Task APageWhoseChangeIsToldBadlyStopsNoLaterStudy()
    {
        // The study waits until the change itself was told.
        using ManualResetEventSlim isToldOf = new();
        session = new(
            folder,
            "Heron",
            new Behind(faults),
            (design, _, _) =>
            {
                if (design.Outline.Waist.WidthMm == 240)
                {
                    isToldOf.Wait();
                }

                return Heron.Value;
            }
        );
        await session.WhenSettled();
        session.Set("outline.waist.width", "240");
        bool isBad = true;
        session.Changed += () =>
        {
            if (isBad)
            {
                isBad = false;
                throw new InvalidOperationException("a page that is gone");
            }
        };
        isToldOf.Set();
        await session.WhenSettled();
        Assert.Contains("a page that is gone", Assert.Single(faults.All));
    }

    [Theory]
    [InlineData("en", "could not be worked out")]
    [InlineData("es", "no se pudo calcular")]
    public async Task AFailedStudyIsSaidWhereItIsAwaited(string language, string said)
    {
        Reader reader = Reader.Parse($"{language}.mm.point.light");
        reader.Apply();
        session = new(
            folder,
            "Heron",
            new Behind(faults),
            (_, _, _) => throw new InvalidOperationException("none")
        );
        await session.WhenSettled();
        using BunitContext context = new();
        IRenderedComponent<ActionStage> stage = Render<ActionStage>(context, reader);
        Assert.Contains(said, stage.Find(".failed").TextContent);
        Assert.Empty(stage.FindAll(".pending"));
        IRenderedComponent<FindingList> findings = Render<FindingList>(
            context,
            reader,
            parameters => parameters.Add(list => list.Now, Stage.Action)
        );
        Assert.Contains(said, findings.Find(".failed").TextContent);
    }

    [Fact]
    public async Task AViewThatFailsIsSaidAndTheNextPartIsDrawn()
    {
        session = await SessionOf(Heron.Value);
        using BunitContext context = new();
        Stage torn = Stage.Body with
        {
            Parts = [new StagePart("ribs", null!), new StagePart("back", ["back"])],
        };
        IRenderedComponent<ViewStage> stage = Render<ViewStage>(
            context,
            English,
            parameters =>
                parameters.Add(view => view.Now, torn).Add(view => view.Room, new Size(200, 150))
        );
        await stage.WaitForAssertionAsync(
            () => Assert.NotEmpty(stage.FindAll(".views .failed")),
            TimeSpan.FromSeconds(60)
        );
        Assert.Empty(stage.FindAll(".pending, .pending-drawing"));
        Assert.Single(faults.All);
        stage.Render(parameters => parameters.Add(view => view.Part, "back"));
        await stage.WaitForAssertionAsync(
            () => Assert.NotEmpty(stage.FindAll(".views svg")),
            TimeSpan.FromSeconds(60)
        );
        Assert.Empty(stage.FindAll(".failed"));
    }

    [Fact]
    public async Task SheetsOfWhichTheStockFailsAreListedAndTheRestIsSaid()
    {
        session = await SessionOf(WithoutStock());
        using BunitContext context = new();
        IRenderedComponent<SheetsSchedule> list = Render<SheetsSchedule>(context, English);
        IRenderedComponent<StockSchedule> stock = Render<StockSchedule>(
            context,
            English,
            parameters => parameters.Add(schedule => schedule.Part, "cut")
        );
        await list.WaitForAssertionAsync(
            () => Assert.NotEmpty(list.FindAll(".failed")),
            TimeSpan.FromSeconds(60)
        );
        Assert.NotEmpty(list.FindAll("[data-sheet-row='outline']"));
        await stock.WaitForAssertionAsync(
            () => Assert.NotEmpty(stock.FindAll(".failed")),
            TimeSpan.FromSeconds(60)
        );
        Assert.Empty(list.FindAll(".pending").Concat(stock.FindAll("p.pending")));
        Assert.NotEmpty(faults.All);
    }

    [Fact]
    public async Task SheetsThatFailAreSaid()
    {
        Study study = Heron.Value;
        session = await SessionOf(
            study with
            {
                Tooling = study.Tooling! with { Workboard = null! },
            }
        );
        using BunitContext context = new();
        IRenderedComponent<SheetsStage> stage = Render<SheetsStage>(context, English);
        await stage.WaitForAssertionAsync(
            () => Assert.NotEmpty(stage.FindAll(".failed")),
            TimeSpan.FromSeconds(60)
        );
        Assert.Empty(stage.FindAll(".pending"));
        Assert.NotEmpty(faults.All);
    }

    // Built anew, since a study keeps the stock of the design that it was built with.
    private static Study WithoutStock() =>
        new(
            Heron.Value.Design with
            {
                Stock = null!,
            },
            Heron.Value.Guitar,
            Heron.Value.Action,
            Heron.Value.Body,
            Heron.Value.Plate,
            Heron.Value.Tooling,
            Heron.Value.Findings
        );

    private async Task<DesignSession> SessionOf(Study study)
    {
        DesignSession made = new(folder, "Heron", new Behind(faults), (_, _, _) => study);
        await made.WhenSettled();
        return made;
    }

    private IRenderedComponent<T> Render<T>(
        BunitContext context,
        Reader reader,
        Action<ComponentParameterCollectionBuilder<T>>? more = null
    )
        where T : IComponent
    {
        context.JSInterop.Mode = JSRuntimeMode.Loose;
        return context.Render<T>(parameters =>
        {
            parameters.AddCascadingValue(new BoardView(session!, session!.State, reader));
            more?.Invoke(parameters);
        });
    }
}
