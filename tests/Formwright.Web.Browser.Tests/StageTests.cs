using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

public sealed class StageTests(Browser browser)
{
    [Theory]
    [InlineData("action", "neck.ramp", "2", "saddle")]
    public async Task AChangeMovesAFigureOnTheDrawing(
        string stage,
        string key,
        string value,
        string figure
    )
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{shop.Address}/d/heron/{stage}");
        string before = await page.FigureAsync(figure);
        await page.SetAsync(key, value);
        await Expect(page.Locator($"[data-figure='{figure}']").First).Not.ToHaveTextAsync(before);
        await page.ReloadAsync();
        await Expect(page.Field(key)).ToHaveValueAsync(value);
    }

    [Theory]
    [InlineData("workboard", "workboard.margin", "60")]
    [InlineData("mould", "mould.wall", "60")]
    public async Task AChangeMovesTheViews(string stage, string key, string value)
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{shop.Address}/d/heron/{stage}");
        ILocator view = page.Locator(".views svg").First;
        string before = await view.InnerHTMLAsync();
        await page.SetAsync(key, value);
        await shop.FileSaysAsync("heron", value);
        await page.WaitForFunctionAsync(
            "before => document.querySelector('.views svg').innerHTML !== before",
            before
        );
    }

    [Fact]
    public async Task SheetsAreShownAndDownloaded()
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync();
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{shop.Address}/d/heron/sheets");
        await Expect(page.Locator("[data-sheet='outline'] svg")).ToBeVisibleAsync();
        await page.Locator("button.link").Nth(1).ClickAsync();
        await Expect(page.Locator("[data-sheet='outline']")).ToHaveCountAsync(0);
        foreach (
            (string file, string start) in ((string, string)[])
                [
                    ("outline.pdf", "%PDF"),
                    ("a4/outline.pdf", "%PDF"),
                    ("outline.svg", "<?xml"),
                    ("calibration.pdf", "%PDF"),
                ]
        )
        {
            IAPIResponse got = await context.APIRequest.GetAsync(
                $"{shop.Address}/files/heron/{file}"
            );
            Assert.Equal(200, got.Status);
            Assert.StartsWith(start, System.Text.Encoding.Latin1.GetString(await got.BodyAsync()));
        }

        await page.Locator("#bar-across").FillAsync("149,25");
        await page.Locator("#bar-across").PressAsync("Enter");
        await shop.FileSaysAsync("heron", "print_scale_x = 0.995");
    }
}
