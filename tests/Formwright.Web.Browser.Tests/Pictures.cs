using Formwright.Testing;
using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>Takes the pictures of <c>docs/pictures/page</c> when FORMWRIGHT_PICTURES is set; they are looked at by people, not compared.</summary>
public sealed class Pictures(Browser browser)
{
    [Fact]
    public async Task Take()
    {
        if (Environment.GetEnvironmentVariable("FORMWRIGHT_PICTURES") is null)
        {
            Assert.Skip("Only when FORMWRIGHT_PICTURES is set.");
        }

        await using Workshop shop = new("heron", "dunlin", "plover");
        await File.AppendAllTextAsync(
            Path.Combine(shop.Folder, "heron.toml"),
            "\n[jig]\nmake = true\n"
        );
        await shop.StartAsync();
        foreach (
            (int width, int height) in ((int, int)[])
                [(1440, 900), (1280, 800), (1024, 768), (768, 1024)]
        )
        {
            await using IBrowserContext context = await browser.ContextAsync(
                width,
                height,
                address: shop.Address
            );
            IPage page = await context.NewPageAsync();
            await AllAsync(page, shop, $"{width}");
            if (width == 1280)
            {
                await GapsAsync(page, shop);
            }
        }

        await using IBrowserContext dark = await browser.ContextAsync(
            1280,
            800,
            "es.mm.comma.dark",
            shop.Address
        );
        await AllAsync(await dark.NewPageAsync(), shop, "dark");
    }

    private static async Task AllAsync(IPage page, Workshop shop, string ending)
    {
        foreach (string name in (string[])["instruments", .. AccessTests.Stages])
        {
            await page.OpenAsync(shop.Address + (name == "instruments" ? "/" : $"/d/heron/{name}"));
            // All of it worked out, as a maker sees it who stays a moment.
            await page.WaitForTimeoutAsync(700);
            await page.WaitForFunctionAsync(
                "() => !document.querySelector('.pending, .pending-drawing') && ![...document.querySelectorAll('.gallery .figure')].some(figure => figure.textContent === '…')",
                null,
                new() { Timeout = 100_000 }
            );
            await page.WaitForTimeoutAsync(300);
            await HideFolderAsync(page);
            await PictureAsync(page, $"{name}-{ending}");
        }
    }

    // A board that dropped too far in damp air.
    private static async Task GapsAsync(IPage page, Workshop shop)
    {
        await page.OpenAsync($"{shop.Address}/d/heron/workboard");
        await page.Locator("[data-part='gaps']").ClickAsync();
        await page.SetAsync("gap.nut.bass", "2.1");
        await page.SetAsync("gap.nut.treble", "1.8");
        await page.Locator("[data-taper]").WaitForAsync();
        await page.WaitForTimeoutAsync(2500);
        await page.Locator("[data-board-check]").ScrollIntoViewIfNeededAsync();
        await PictureAsync(page, "gaps-1280");
        await page.SetAsync("gap.nut.bass", "");
        await page.SetAsync("gap.nut.treble", "");
    }

    /// <summary>The walk of the guide, step by step, with a picture of each.</summary>
    [Fact]
    public async Task Walk()
    {
        if (Environment.GetEnvironmentVariable("FORMWRIGHT_PICTURES") is null)
        {
            Assert.Skip("Only when FORMWRIGHT_PICTURES is set.");
        }

        await using Workshop shop = new();
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(
            1280,
            800,
            address: shop.Address
        );
        IPage page = await context.NewPageAsync();
        await page.OpenAsync(shop.Address);
        await page.Locator("[data-model='heron']").ClickAsync();
        await page.AtAsync("/d/Heron/outline");
        await page.WaitForTimeoutAsync(2500);
        await PictureAsync(page, "walk-1-new");
        await page.DragAsync("lower_bout", "uy", 7, 0);
        await page.WaitForTimeoutAsync(2500);
        await PictureAsync(page, "walk-2-lower-bout");
        await page.SetAsync("outline.waist.at", "110");
        await page.Locator(".findings li.held").First.WaitForAsync();
        await page.WaitForTimeoutAsync(600);
        await PictureAsync(page, "walk-3-finding");
        await page.Locator(".findings li.held a").First.ClickAsync();
        await page.SetAsync("outline.waist.at", "190");
        await page.Locator(".findings li.held")
            .WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await page.Locator(".stages a").Nth(1).ClickAsync();
        await page.Locator("[data-figure='action-12']").WaitForAsync();
        await page.Locator("[data-solve='Ramp']").ClickAsync();
        await page.WaitForTimeoutAsync(1500);
        await PictureAsync(page, "walk-4-action");
        await page.GotoAsync($"{shop.Address}/d/Heron/sheets");
        await page.Locator(".paper svg").WaitForAsync();
        await page.Locator("button.link", new() { HasText = "half template" }).ClickAsync();
        await page.WaitForTimeoutAsync(1500);
        await page.Locator("tr.lit").ScrollIntoViewIfNeededAsync();
        await page.Mouse.MoveAsync(600, 790);
        await PictureAsync(page, "walk-5-template");
        IDownload tiles = await page.RunAndWaitForDownloadAsync(() =>
            page.Locator("tr.lit a[href*='/a4/']").ClickAsync()
        );
        Assert.EndsWith("A4.pdf", tiles.SuggestedFilename);
    }

    // The folder of a run means nothing to a reader.
    private static Task<System.Text.Json.JsonElement?> HideFolderAsync(IPage page) =>
        page.EvaluateAsync(
            "() => { const path = document.querySelector('.path'); if (path) path.textContent = '~/guitars'; }"
        );

    private static Task<byte[]> PictureAsync(IPage page, string name) =>
        page.ScreenshotAsync(
            new() { Path = Repository.PathOf("docs", "pictures", "page", name + ".png") }
        );
}
