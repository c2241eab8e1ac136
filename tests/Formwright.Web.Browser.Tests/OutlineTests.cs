using System.Globalization;
using Formwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

public sealed class OutlineTests(Browser browser)
{
    // What is said and not seen whole: beyond the window, cut off or under something else.
    private const string Covered = """
        which => [...document.querySelectorAll(which)].filter(each => each.textContent).map(each => {
            const range = document.createRange();
            range.selectNodeContents(each);
            return [...range.getClientRects()].filter(({ left, right, top, bottom }) =>
                [[left + 1, top + 3], [right - 1, bottom - 3]].some(([x, y]) => !each.contains(document.elementFromPoint(x, y)))).length
                ? each.textContent : "";
        }).join("")
        """;

    [Fact]
    public async Task AChangedWidthMovesFiguresAndStays()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        string before = await page.FigureAsync("half-length");
        await page.SetAsync("outline.lower_bout.width", "372,5");
        await Expect(page.Locator("[data-figure='half-length']")).Not.ToHaveTextAsync(before);
        await Expect(page.Locator("[data-kept]")).ToHaveAttributeAsync("data-kept", "yes");
        await browser.Shop.FileSaysAsync(open.Name, "width = 372.5");
        Assert.Contains("# heel to tail", File.ReadAllText(browser.Shop.PathOf(open.Name)));
        await page.ReloadAsync();
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("372.5");

        await page.WaitForTimeoutAsync(500);
        await page.Locator("body").PressAsync("Control+z");
        await browser.Shop.FileSaysAsync(open.Name, "width = 368");
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("368");
        await page.Locator("body").PressAsync("Control+Shift+Z");
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("372.5");
    }

    // An answer to an earlier letter must not take back a later one, however fast they come.
    [Fact]
    public async Task WhatIsTypedFastArrivesWhole()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        ILocator field = page.Field("outline.lower_bout.width");
        await field.FocusAsync();
        foreach (
            (string typed, string shown) in ((string, string)[])
                [("372,5", "372.5"), ("342", "342"), ("350,25", "350.25"), ("345.75", "345.75")]
        )
        {
            await page.Keyboard.PressAsync("Control+a");
            await page.Keyboard.TypeAsync(typed);
            await page.Keyboard.PressAsync("Enter");
            await browser.Shop.FileSaysAsync(open.Name, $"width = {shown}");
            await Expect(field).ToHaveValueAsync(shown);
        }

        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("360");
        await page.Keyboard.PressAsync("Escape");
        await Expect(field).ToHaveValueAsync("345.75");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("361");
        await page.Keyboard.PressAsync("ArrowUp");
        await browser.Shop.FileSaysAsync(open.Name, "width = 361.1");
        await Expect(field).ToHaveValueAsync("361.1");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("4000");
        await page.Keyboard.PressAsync("Enter");
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(field).ToHaveValueAsync("4000");
        await page.Keyboard.PressAsync("Escape");
        await Expect(field).ToHaveValueAsync("361.1");
        await Expect(field).Not.ToHaveAttributeAsync("aria-invalid", "true");
    }

    [Fact]
    public async Task AHandleFollowsHandAndKeys()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        await page.DragAsync("lower_bout", "uy", 10, 6);
        await Expect(page.Field("outline.lower_bout.width")).Not.ToHaveValueAsync("368");
        await Expect(page.Field("outline.lower_bout.at")).Not.ToHaveValueAsync("356");
        double width = double.Parse(
            await page.Field("outline.lower_bout.width").InputValueAsync(),
            CultureInfo.InvariantCulture
        );
        Assert.InRange(width, 375, 390);

        await page.Locator("body").PressAsync("Control+z");
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("368");

        ILocator waist = page.Locator("[data-handle='waist'][data-axis='uy']");
        await waist.PressAsync("ArrowDown");
        await Expect(page.Field("outline.waist.at")).ToHaveValueAsync("190.1");
        await waist.PressAsync("Shift+ArrowRight");
        await Expect(page.Field("outline.waist.width")).ToHaveValueAsync("238");
    }

    [Fact]
    public async Task AFindingLeadsToItsField()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        await page.SetAsync("outline.waist.width", "300");
        await Expect(page.Locator("[data-to-findings]")).ToContainTextAsync("1");
        await page.Locator("[data-to-findings]").ClickAsync();
        await Expect(page.Locator(".findings")).ToBeFocusedAsync();
        ILocator cure = page.Locator(".findings li.held a").First;
        await cure.ClickAsync();
        string? key = await cure.GetAttributeAsync("data-jump");
        await Expect(page.Field(key!)).ToBeFocusedAsync();
        await page.SetAsync("outline.waist.width", "236");
        await Expect(page.Locator(".findings li.held a[data-jump='outline.waist.width']"))
            .ToHaveCountAsync(0);
    }

    [Fact]
    public async Task OutOfRangeSaysWhatTheKeyTakesAndChangesNothing()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        string before = File.ReadAllText(browser.Shop.PathOf(open.Name));
        await page.SetAsync("outline.waist.width", "5");
        await Expect(page.Field("outline.waist.width"))
            .ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator("[id='f-outline.waist.width-fault']")).ToContainTextAsync("20");
        Assert.Equal("", await page.EvaluateAsync<string>(Covered, ".fault"));
        // How a station is measured takes more lines than a width.
        await page.Field("outline.upper_bout.at").FocusAsync();
        await Expect(page.Locator(".how")).ToContainTextAsync("Slide two squares");
        Assert.Equal("", await page.EvaluateAsync<string>(Covered, ".how"));
        await page.Field("outline.waist.width").PressAsync("Escape");
        await page.Locator("[id='d-outline.waist.at']").FillAsync("x");
        await page.Locator("[id='d-outline.waist.at']").PressAsync("Enter");
        await Expect(page.Locator(".fault")).ToBeVisibleAsync();
        Assert.Equal("", await page.EvaluateAsync<string>(Covered, ".fault"));
        Assert.Equal(before, File.ReadAllText(browser.Shop.PathOf(open.Name)));
    }

    [Fact]
    public async Task ATraceBecomesADesignAndLiesOverIt()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        await page.GotoAsync(browser.Shop.Address + "/");
        await page.LiveAsync();
        await page.Locator("input[type=file]")
            .SetInputFilesAsync(
                Repository.PathOf("tests", "Formwright.Trace.Tests", "files", "outline-2000.dxf")
            );
        await page.AtAsync("/outline");
        await page.LiveAsync();
        await Expect(page.Locator("path.overlay")).ToBeAttachedAsync();
        await Expect(page.Locator("[data-figure='overlay-largest']")).ToBeVisibleAsync();
        await page.Locator("[data-overlay-off]").ClickAsync();
        await Expect(page.Locator("path.overlay")).ToHaveCountAsync(0);
        await page.Locator("#overlay-of").SelectOptionAsync(open.Name);
        await Expect(page.Locator("path.overlay")).ToBeAttachedAsync();
    }

    [Fact]
    public async Task SpanishAndInches()
    {
        await using OpenDesign open = await browser.OpenAsync("outline", "es.in.comma.light");
        IPage page = open.Page;
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await Expect(page.Locator(".stages")).ToContainTextAsync("Plantilla");
        await page.SetAsync("outline.lower_bout.width", "14 1/2");
        await browser.Shop.FileSaysAsync(open.Name, "width = \"14 1/2 in\"");
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("14 1/2");
        await page.SetAsync("outline.waist.width", "9,25");
        await browser.Shop.FileSaysAsync(open.Name, "width = \"9.25 in\"");
        await Expect(page.Field("outline.waist.width")).ToHaveValueAsync("9 1/4");
    }
}
