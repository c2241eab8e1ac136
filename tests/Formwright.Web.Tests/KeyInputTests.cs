using Bunit;
using Formwright.Design;
using Formwright.Web.Components.Board;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging.Abstractions;

namespace Formwright.Web.Tests;

public sealed class KeyInputTests : IDisposable
{
    private static readonly Reader English = Reader.Parse("en.mm.point.light");
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-key-{Guid.NewGuid():N}")
    );
    private readonly DesignSession session;
    private readonly BunitContext context = new();

    public KeyInputTests()
    {
        English.Apply();
        folder.Write("Heron", DesignModels.TextOf("heron"));
        session = new(
            folder,
            "Heron",
            new Behind(NullLogger<Behind>.Instance),
            (_, _, _) => throw new InvalidOperationException("Nothing is to be worked out here.")
        );
    }

    public void Dispose()
    {
        context.Dispose();
        session.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Fact]
    public void WhatIsWrongIsTakenBackByEscapeAndByUndo()
    {
        session.Set("dome.fullness", "1.2");
        IRenderedComponent<CascadingValue<BoardView>> input = Render("dome.fullness");
        input.Find("input").Change("abc");
        Assert.NotEmpty(input.FindAll("[role=alert]"));
        Assert.Equal("1.2", input.Find("input").GetAttribute("data-was"));
        input.Find("input").KeyDown("Escape");
        Assert.Empty(input.FindAll("[role=alert]"));

        input.Find("input").Change("7");
        Assert.NotEmpty(input.FindAll("[role=alert]"));
        session.Undo();
        input.Render(parameters => parameters.Add(view => view.Value, View));
        Assert.Empty(input.FindAll("[role=alert]"));
    }

    private BoardView View => new(session, session.State, English);

    private IRenderedComponent<CascadingValue<BoardView>> Render(string path) =>
        context.Render<CascadingValue<BoardView>>(parameters =>
            parameters
                .Add(view => view.Value, View)
                .AddChildContent<KeyInput>(input =>
                    input.Add(each => each.Path, path).Add(each => each.Label, path)
                )
        );
}
