using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

public sealed class StageTests(Browser browser)
{
    [Theory]
    [InlineData("action", "", "neck.ramp", "2", "saddle")]
    [InlineData("body", "", "dome.height", "3", "dome-saddle")]
    [InlineData("body", "back", "back.depth_tail", "104", "volume")]
    [InlineData("body", "ribs", "ribs.width_allowance", "6", "rib-blank")]
    [InlineData("body", "bridge", "bridge.height", "9", "slot-depth")]
    [InlineData("neck", "", "heel.wedge_thick", "5", "slot-back")]
    [InlineData("wood", "", "climate.dry_humidity", "30", "glue-best")]
    public async Task AChangeMovesAFigureAndStays(
        string stage,
        string part,
        string key,
        string value,
        string figure
    )
    {
        await using OpenDesign open = await browser.OpenAsync(stage);
        IPage page = open.Page;
        await ShowAsync(page, part);
        string before = await page.FigureAsync(figure);
        string was = await page.Field(key).InputValueAsync();
        await page.SetAsync(key, value);
        await Expect(page.Locator($"[data-figure='{figure}']").First).Not.ToHaveTextAsync(before);
        await page.ReloadAsync();
        await page.LiveAsync();
        await ShowAsync(page, part);
        await Expect(page.Field(key)).ToHaveValueAsync(value);
        await page.Locator("body").PressAsync("Control+z");
        await Expect(page.Field(key)).ToHaveValueAsync(was);
    }

    private static async Task ShowAsync(IPage page, string part)
    {
        if (part.Length > 0)
        {
            await page.Locator($"[data-part='{part}']").ClickAsync();
        }
    }

    [Theory]
    [InlineData("workboard", "workboard.margin", "60")]
    [InlineData("mould", "mould.wall", "60")]
    public async Task AChangeMovesTheViews(string stage, string key, string value)
    {
        await using OpenDesign open = await browser.OpenAsync(stage);
        IPage page = open.Page;
        ILocator view = page.Locator(".views svg").First;
        string before = await view.InnerHTMLAsync();
        await page.SetAsync(key, value);
        await browser.Shop.FileSaysAsync(open.Name, value);
        await page.WaitForFunctionAsync(
            "before => document.querySelector('.views svg').innerHTML !== before",
            before
        );
    }

    [Fact]
    public async Task SheetsAreShownAndDownloaded()
    {
        await using OpenDesign open = await browser.OpenAsync("sheets");
        IPage page = open.Page;
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
            IAPIResponse got = await open.Context.APIRequest.GetAsync(
                $"{browser.Shop.Address}/files/{open.Name}/{file}"
            );
            Assert.Equal(200, got.Status);
            Assert.StartsWith(start, System.Text.Encoding.Latin1.GetString(await got.BodyAsync()));
        }

        await page.Locator("#bar-across").FillAsync("149,25");
        await page.Locator("#bar-across").PressAsync("Enter");
        await browser.Shop.FileSaysAsync(open.Name, "print_scale_x = 0.995");
    }
}
