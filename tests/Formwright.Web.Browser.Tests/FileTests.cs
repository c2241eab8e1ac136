using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

/// <summary>The file is the truth: other hands, other tabs, a fallen server.</summary>
public sealed class FileTests(Browser browser)
{
    [Fact]
    public async Task WhatIsWrittenOutsideShowsAndABrokenFileKeepsTheLastDrawing()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        string text = File.ReadAllText(browser.Shop.PathOf(open.Name));
        File.WriteAllText(
            browser.Shop.PathOf(open.Name),
            text.Replace("width = 368", "width = 374", StringComparison.Ordinal)
        );
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("374");

        File.WriteAllText(
            browser.Shop.PathOf(open.Name),
            text.Replace("width = 368", "widht = 368", StringComparison.Ordinal)
        );
        await Expect(page.Locator(".notice")).ToContainTextAsync("widht");
        await Expect(page.Locator(".notice .figure").First).ToContainTextAsync(":");
        Assert.NotEqual("", await page.Locator("path.outline").First.GetAttributeAsync("d"));
        File.WriteAllText(browser.Shop.PathOf(open.Name), text);
        await Expect(page.Locator(".notice")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task TwoTabsShowOneDesign()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage one = open.Page;
        IPage other = await open.Context.NewPageAsync();
        await other.OpenAsync($"{browser.Shop.Address}/d/{open.Name}/outline");
        await one.SetAsync("outline.waist.width", "240");
        await Expect(other.Field("outline.waist.width")).ToHaveValueAsync("240");
    }

    [Fact]
    public async Task AKilledServerLosesNothingThatWasKept()
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{shop.Address}/d/heron/outline");
        await page.SetAsync("outline.waist.width", "241");
        await page.WaitForTimeoutAsync(1000);
        shop.Kill();
        await shop.StartAsync();
        await page.GotoAsync($"{shop.Address}/d/heron/outline");
        await Expect(page.Field("outline.waist.width")).ToHaveValueAsync("241");
    }

    [Fact]
    public async Task ANewInstrumentIsMadeCopiedNamedAndBinned()
    {
        await using Workshop shop = new();
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync(shop.Address);
        await page.Locator("[data-model='dunlin']").ClickAsync();
        await page.AtAsync("/d/Dunlin/outline");
        await Expect(page.Field("outline.lower_bout.width")).ToHaveValueAsync("342");
        await page.OpenAsync(shop.Address);
        ILocator made = page.Locator("[data-design='Dunlin']");
        await made.GetByText("duplicate").ClickAsync();
        await Expect(page.Locator("[data-design='Dunlin 2']")).ToBeVisibleAsync();
        await made.GetByText("rename").ClickAsync();
        await Expect(made.Locator("input")).ToBeFocusedAsync();
        await made.Locator("input").FillAsync("../Stray");
        await made.Locator("input").PressAsync("Tab");
        await made.Locator(".ask button").First.ClickAsync();
        await Expect(page.Locator(".notice")).ToContainTextAsync("letters");
        await made.Locator("input").FillAsync("Curlew");
        await made.Locator("input").PressAsync("Enter");
        ILocator named = page.Locator("[data-design='Curlew']");
        await named.GetByText("to the bin").ClickAsync();
        await named.Locator(".ask button").First.ClickAsync();
        await Expect(named).ToHaveCountAsync(0);
        Assert.Single(Directory.GetFiles(Path.Combine(shop.Folder, ".bin")));
        await page.Locator("[data-bin] button").ClickAsync();
        await Expect(named).ToBeVisibleAsync();
        Assert.Empty(Directory.GetFiles(Path.Combine(shop.Folder, ".bin")));
    }

    [Fact]
    public async Task AButtonThatIsPressedTooEarlyAnswersLater()
    {
        await using Workshop shop = new();
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.AddInitScriptAsync(
            """
            document.addEventListener("DOMContentLoaded", () => {
                const button = document.querySelector("[data-model='dunlin']");
                if (!button) return;
                window.wasUp = !!document.querySelector("[data-live=yes]");
                button.click();
            });
            """
        );
        await page.GotoAsync(shop.Address);
        await page.AtAsync("/d/Dunlin/outline");
        Assert.False(await page.EvaluateAsync<bool>("() => window.wasUp"));
        Assert.Single(Directory.GetFiles(shop.Folder));
    }
}
