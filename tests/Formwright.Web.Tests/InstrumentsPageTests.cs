using AngleSharp.Dom;
using Bunit;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Web.Components.Pages;
using Formwright.Web.Designs;
using Formwright.Web.Reading;
using Formwright.Web.Serving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Formwright.Web.Tests;

public sealed class InstrumentsPageTests : IDisposable
{
    private readonly DesignFolder folder = new(
        Path.Combine(Path.GetTempPath(), $"formwright-list-{Guid.NewGuid():N}")
    );
    private readonly BunitContext context = new();

    public InstrumentsPageTests()
    {
        Behind behind = new(NullLogger<Behind>.Instance);
        context.Services.AddSingleton(behind);
        context.Services.AddSingleton(new DesignSessions(folder, behind));
        context.Services.AddSingleton(new DesignGallery(folder));
        context.Services.AddSingleton(new ServeOptions(folder.Root, 0));
        context.JSInterop.Mode = JSRuntimeMode.Loose;
    }

    public void Dispose()
    {
        context.Dispose();
        Directory.Delete(folder.Root, recursive: true);
    }

    [Theory]
    [InlineData("en.mm.point.light", SheetLanguage.En)]
    [InlineData("es.in.comma.light", SheetLanguage.Es)]
    public void ANewInstrumentHasItsSheetsInTheLanguageOfThePage(
        string reader,
        SheetLanguage language
    )
    {
        Click(Render(reader), "[data-model=plover]");
        DesignReading made = DesignText.Load(folder.PathOf("Plover"));
        Assert.Equal(language, made.Design!.Sheets.Language);
    }

    [Fact]
    public void WhatWasBinnedIsPutBack()
    {
        // It does not read, so that nothing is worked out for it.
        folder.Write("Torn", "[");
        IRenderedComponent<InstrumentsPage> page = Render("en.mm.point.light");
        Assert.Empty(page.FindAll("[data-bin]"));
        Click(page, "[data-design=Torn] .doing button:last-child");
        context.JSInterop.VerifyFocusAsyncInvoke();
        Click(page, "[data-design=Torn] .ask button");
        Assert.Empty(page.FindAll("[data-design=Torn]"));
        Click(page, "[data-bin] button");
        Assert.Single(page.FindAll("[data-design=Torn]"));
        Assert.Empty(page.FindAll("[data-bin]"));
    }

    [Fact]
    public void ANameIsGivenByKeysAlone()
    {
        folder.Write("Torn", "[");
        IRenderedComponent<InstrumentsPage> page = Render("en.mm.point.light");
        const string Ask = "[data-design=Torn] .doing button:nth-child(2)";
        Click(page, Ask);
        context.JSInterop.VerifyFocusAsyncInvoke();
        Do(page, ".ask input", input => input.KeyDown("Escape"));
        Assert.Empty(page.FindAll(".ask"));
        Click(page, Ask);
        Do(page, ".ask input", input => input.Input("Mended"));
        Do(page, ".ask input", input => input.KeyDown("Enter"));
        Assert.Single(page.FindAll("[data-design=Mended]"));
        Assert.True(folder.Exists("Mended"));
    }

    private static void Click(IRenderedComponent<InstrumentsPage> page, string what) =>
        Do(page, what, element => element.Click());

    // Outlines and findings may come into the list meanwhile.
    private static void Do(
        IRenderedComponent<InstrumentsPage> page,
        string what,
        Action<IElement> act
    ) => page.InvokeAsync(() => act(page.Find(what))).GetAwaiter().GetResult();

    private IRenderedComponent<InstrumentsPage> Render(string reader)
    {
        Reader who = Reader.Parse(reader);
        who.Apply();
        return context.Render<InstrumentsPage>(parameters => parameters.AddCascadingValue(who));
    }
}
