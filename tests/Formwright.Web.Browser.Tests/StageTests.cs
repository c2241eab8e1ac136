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

    // The rosette's ring is the tool's: its finding leads to what writes it out, and that to the ring's own field.
    [Fact]
    public async Task AFindingOfAListThatTheToolChoseIsCuredOnThePage()
    {
        await using OpenDesign open = await browser.OpenAsync("body");
        IPage page = open.Page;
        await page.SetAsync("soundboard.thickness", "1.2");
        ILocator cure = page.Locator("a[data-jump='rosette.rings[0].depth']");
        await cure.ClickAsync();
        ILocator writeOut = page.Locator("[data-add='rosette.rings']");
        await Expect(writeOut).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("[id='m-rosette.rings[0].inner']")).ToBeFocusedAsync();
        await cure.ClickAsync();
        ILocator depth = page.Locator("[id='m-rosette.rings[0].depth']");
        await Expect(depth).ToBeFocusedAsync();
        await depth.FillAsync("0,8");
        await depth.PressAsync("Enter");
        await Expect(cure).ToHaveCountAsync(0);
        await browser.Shop.FileSaysAsync(open.Name, "depth = 0.8");
    }

    // A stage is left before its drawing is tied to the page's script: the line to the server must outlive it.
    [Fact]
    public async Task AHandThatRunsThroughTheStagesKeepsThePage()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        await page.EvaluateAsync("() => { window.kept = true; }");
        await page.EvaluateAsync(
            """
            async () => {
                for (const pause of [0, 5, 20, 60, 0, 10, 40, 90, 30, 3]) {
                    for (let i = 0; i < 3; i++) {
                        document.querySelectorAll(".stages a")[i].click();
                        await new Promise(done => setTimeout(done, pause));
                    }
                }
                document.querySelectorAll(".stages a")[1].click();
            }
            """
        );
        await page.AtAsync("/action");
        await page.SetAsync("neck.ramp", "2");
        await browser.Shop.FileSaysAsync(open.Name, "ramp = 2");
        Assert.True(await page.EvaluateAsync<bool>("() => window.kept === true"));
    }

    [Fact]
    public async Task MeasuredGapsGiveAShim()
    {
        await using OpenDesign open = await browser.OpenAsync("workboard");
        IPage page = open.Page;
        await page.Locator("[data-part='gaps']").ClickAsync();
        await page.SetAsync("gap.nut.bass", "2,1");
        await page.SetAsync("gap.nut.treble", "1.8");
        // 2.1 and 1.8 found, 1.5 wanted.
        ILocator shim = page.Locator("[data-taper='gaps.shim'] tbody tr").First;
        await Expect(shim).ToContainTextAsync("0.60");
        await Expect(shim).ToContainTextAsync("0.30");
        IAPIResponse pdf = await open.Context.APIRequest.GetAsync(
            $"{browser.Shop.Address}/files/{open.Name}/shim.pdf"
        );
        Assert.Equal(200, pdf.Status);
        await page.ReloadAsync();
        await page.LiveAsync();
        await page.Locator("[data-part='gaps']").ClickAsync();
        await Expect(page.Field("gap.nut.bass")).ToHaveValueAsync("2.1");
        await page.SetAsync("gap.nut.bass", "1.5");
        await page.SetAsync("gap.nut.treble", "1.5");
        await Expect(page.Locator("[data-taper]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task AHoleTellsItsPlaceAndKindsOfLineCanBeHidden()
    {
        await using OpenDesign open = await browser.OpenAsync("workboard");
        IPage page = open.Page;
        ILocator hole = page.Locator(".hole-target").First;
        await hole.ClickAsync();
        await Expect(page.Locator("[data-hole-tip]")).ToContainTextAsync("x ");
        await Expect(page.Locator("[data-hole-tip]")).ToContainTextAsync("⌀");
        await Expect(page.Locator("[data-hole-tip]")).ToContainTextAsync("1 · dowel");
        await page.Locator("[data-kind='holes']").ClickAsync();
        await Expect(hole).ToBeHiddenAsync();
        await page.Locator("[data-kind='holes']").ClickAsync();
        await Expect(hole).ToBeVisibleAsync();
        await page.Locator("[data-part='relief']").ClickAsync();
        await Expect(page.Locator("[data-view-of='relief 0']")).ToBeVisibleAsync();
        await page.Locator(".hole-target").First.ClickAsync();
        await Expect(page.Locator("[data-hole-tip]")).ToContainTextAsync("depth hole");
        await Expect(page.Locator("[data-hole-tip]")).ToContainTextAsync("deep");
    }

    [Fact]
    public async Task TheOrderOfWorkHasItsGatesAndTheStockIsNested()
    {
        await using OpenDesign open = await browser.OpenAsync("stock");
        IPage page = open.Page;
        await Expect(page.Locator("[data-gate]").First).ToBeVisibleAsync();
        await page.Locator("[data-part='cut']").ClickAsync();
        // Nesting takes seconds on a busy machine.
        await Expect(page.Locator("[data-figure='stock-sheets']"))
            .ToBeVisibleAsync(new() { Timeout = 100_000 });
        await Expect(page.Locator(".views svg").First).ToBeVisibleAsync();
        await page.SetAsync("stock.margin", "25");
        await browser.Shop.FileSaysAsync(open.Name, "margin = 25");
    }

    [Fact]
    public async Task TheBracketJigIsMadeWhenItIsAskedFor()
    {
        await using OpenDesign open = await browser.OpenAsync("jig");
        IPage page = open.Page;
        await page.Field("jig.make").CheckAsync();
        await Expect(page.Locator("[data-figure='jig-slots']")).ToBeVisibleAsync();
        await Expect(page.Locator(".views svg").First).ToBeVisibleAsync();
        await browser.Shop.FileSaysAsync(open.Name, "make = true");
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
