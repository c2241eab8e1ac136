using Bunit;
using Formwright.Design;
using Formwright.Packs;
using Formwright.Web.Components.Board;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Formwright.Web.Tests;

/// <summary>While a hand drags, what the drag changes is drawn at once and nothing else is drawn anew; at rest all of it follows.</summary>
public sealed class DragTests : IDisposable
{
    private static readonly Reader English = Reader.Parse("en.mm.point.light");

    private static readonly Lazy<Study> Heron = new(() =>
        Study.Of(DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!)
    );

    // With a finding that a narrow waist breaks.
    private static readonly Lazy<Study> Narrow = new(() =>
        Study.Of(
            DesignText
                .Parse(DesignEdit.Set(DesignModels.TextOf("heron"), "dome.rim_width", "4"), "heron")
                .Design!
        )
    );

    private readonly BunitContext context = new();
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-drag-{Guid.NewGuid():N}")
    );
    private readonly SemaphoreSlim atRest = new(0);
    private readonly DesignSession session;
    private RenderFragment? parts;

    public DragTests()
    {
        English.Apply();
        context.JSInterop.Mode = JSRuntimeMode.Loose;
        folder.Write("Heron", DesignModels.TextOf("heron"));
        Behind behind = new(new ToldFaults());
        context.Services.AddSingleton(new DesignSessions(folder, behind));
        bool isFirst = true;
        session = new(
            folder,
            "Heron",
            behind,
            (_, _, _) =>
            {
                if (isFirst)
                {
                    isFirst = false;
                    return Heron.Value;
                }

                atRest.Wait();
                return Narrow.Value;
            }
        );
    }

    public void Dispose()
    {
        atRest.Release(100);
        session.Dispose();
        context.Dispose();
        atRest.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Fact]
    public async Task StagesAndFindingsAreDrawnAnewWhenTheHandRestsAndNotBefore()
    {
        await session.WhenSettled();
        IRenderedComponent<CascadingValue<BoardView>> board = Board(builder =>
        {
            builder.OpenComponent<StageList>(0);
            builder.AddAttribute(1, nameof(StageList.Name), "Heron");
            builder.AddAttribute(2, nameof(StageList.Now), Stage.Outline);
            builder.CloseComponent();
            builder.OpenComponent<FindingList>(3);
            builder.AddAttribute(4, nameof(FindingList.Name), "Heron");
            builder.AddAttribute(5, nameof(FindingList.Now), Stage.Body);
            builder.CloseComponent();
        });
        IRenderedComponent<StageList> stages = board.FindComponent<StageList>();
        IRenderedComponent<FindingList> findings = board.FindComponent<FindingList>();
        Assert.Empty(findings.FindAll(".pending"));
        string counts = stages.Markup;
        string said = findings.Find("ol").TextContent;

        Drag(board, 370);
        // That they are behind is said by the first move.
        findings.Find(".pending");
        // Nobody asks a part for its first drawing, so it knows what it was drawn from after the second.
        Drag(board, 371);
        (int stagesBefore, int findingsBefore) = (stages.RenderCount, findings.RenderCount);
        for (int width = 372; width < 382; width++)
        {
            Drag(board, width);
        }

        Assert.Equal(stagesBefore, stages.RenderCount);
        Assert.Equal(findingsBefore, findings.RenderCount);

        atRest.Release(100);
        await session.WhenSettled();
        Show(board);
        Assert.Empty(findings.FindAll(".pending"));
        Assert.NotEqual(said, findings.Find("ol").TextContent);
        Assert.NotEqual(counts, stages.Markup);
    }

    [Fact]
    public async Task TheFiguresOfTheOutlineNeverWaitForTheStudy()
    {
        await session.WhenSettled();
        IRenderedComponent<CascadingValue<BoardView>> board = Board(builder =>
        {
            builder.OpenComponent<OutlineSchedule>(0);
            builder.CloseComponent();
        });
        string Figure(string name) => board.Find($"[data-figure='{name}']").TextContent;
        string[] names = ["half-length", "area", "tightest"];
        string[] before = [.. names.Select(Figure)];
        Drag(board, 390);
        Assert.True(session.State.IsPending);
        Assert.Empty(board.FindAll(".pending"));
        Assert.All(names.Zip(before), pair => Assert.NotEqual(pair.Second, Figure(pair.First)));
        // As the study will have it.
        Study study = Study.Of(session.State.Design!);
        Assert.Equal(
            $"R {English.Figure(study.Guitar!.Figures.TightestBoutMm)}",
            Figure("tightest")
        );
        Assert.Equal(English.Figure(study.Guitar.Figures.HalfPerimeterMm), Figure("half-length"));
        Assert.Equal(
            study.Guitar.Figures.CurvaturePieces.ToString(English.Culture),
            Figure("pieces")
        );
    }

    [Fact]
    public async Task WhatIsPointedAtIsToldWhenTheHandRests()
    {
        await session.WhenSettled();
        IRenderedComponent<CascadingValue<BoardView>> board = Board(builder =>
        {
            builder.OpenComponent<OutlineStage>(0);
            builder.CloseComponent();
        });
        string? Probe() => board.Find("svg[data-drawing]").GetAttribute("data-probe");
        string Curve() => board.Find("path.outline").GetAttribute("d")!;
        string before = Probe()!;
        string curve = Curve();
        Assert.Equal(181, before.Split(';', StringSplitOptions.RemoveEmptyEntries).Length);
        Drag(board, 390);
        Assert.Null(Probe());
        Assert.NotEqual(curve, Curve());

        atRest.Release(100);
        await session.WhenSettled();
        Show(board);
        Assert.NotNull(Probe());
        Assert.NotEqual(before, Probe());
    }

    [Fact]
    public async Task TheFolderIsNotReadAtEveryMove()
    {
        await session.WhenSettled();
        IRenderedComponent<CascadingValue<BoardView>> board = Board(builder =>
        {
            builder.OpenComponent<OverlaySection>(0);
            builder.CloseComponent();
        });
        Drag(board, 390);
        folder.Write("Another", DesignModels.TextOf("heron"));
        Drag(board, 391);
        Assert.Empty(board.FindAll("option[value='Another']"));
        atRest.Release(100);
        await session.WhenSettled();
        Show(board);
        Assert.Single(board.FindAll("option[value='Another']"));
    }

    private void Drag(IRenderedComponent<CascadingValue<BoardView>> board, int width)
    {
        Assert.Empty(session.Set("outline.lower_bout.width", $"{width}", "one drag"));
        Show(board);
    }

    private void Show(IRenderedComponent<CascadingValue<BoardView>> board) =>
        board.Render(parameters =>
            parameters.Add(value => value.Value, View()).Add(value => value.ChildContent, parts)
        );

    private BoardView View() => new(session, session.State, English);

    private IRenderedComponent<CascadingValue<BoardView>> Board(RenderFragment shown)
    {
        parts = shown;
        return context.Render<CascadingValue<BoardView>>(parameters =>
            parameters.Add(value => value.Value, View()).Add(value => value.ChildContent, parts)
        );
    }
}
