using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

/// <summary>A tablet in the hand: a fingertip of 40 pixels finds what it aims at, and everything is in sight.</summary>
public sealed class TouchTests(Browser browser)
{
    // What a finger that comes down anywhere within 40 pixels of something on the drawing takes hold of, where that is not what it aimed at.
    private const string Missed = """
        () => {
            const missed = [];
            const at = (x, y) => {
                const hit = document.elementFromPoint(x, y);
                const near = hit?.closest("[data-touch]")?.dataset;
                return near ? document.querySelector(`[data-handle="${near.touch}"][data-axis="${near.touchAxis}"]`) : hit?.closest("[data-handle], input");
            };
            const fields = [...document.querySelectorAll(".drawing input")];
            const areas = [...document.querySelectorAll("[data-touch]")];
            for (const each of [...fields, ...areas]) {
                const box = each.getBoundingClientRect();
                const name = each.id || `${each.dataset.touch} ${each.dataset.touchAxis}`;
                if (box.height < 40 || box.width < 40) missed.push(`${name} is ${box.width.toFixed()} by ${box.height.toFixed()}`);
                const wanted = each.id ? each : document.querySelector(`[data-handle="${each.dataset.touch}"][data-axis="${each.dataset.touchAxis}"]`);
                for (const dx of [0.05, 0.5, 0.95]) for (const dy of [0.05, 0.5, 0.95]) {
                    const got = at(box.left + dx * box.width, box.top + dy * box.height);
                    if (got !== wanted) missed.push(`${name} at ${dx} ${dy} gives ${got?.id || got?.dataset.handle || "nothing"}`);
                }
            }
            if (fields.length === 0) missed.push("no field on the drawing");
            return missed;
        }
        """;

    // Holes that a fingertip would miss, and what is said of one that is not seen whole.
    private const string MissedHoles = """
        () => {
            const missed = [];
            for (const hole of document.querySelectorAll(".hole-target")) {
                const box = hole.querySelector(".reach").getBoundingClientRect();
                const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
                if (box.width < 40) missed.push(`${hole.dataset.hole} is ${box.width.toFixed(1)} wide`);
                for (const [dx, dy] of [[0, 0], [-19, 0], [19, 0], [0, -19], [0, 19]])
                    if (document.elementFromPoint(x + dx, y + dy)?.closest("[data-hole]") !== hole) missed.push(`${hole.dataset.hole} at ${dx} ${dy}`);
            }
            if (!document.querySelector(".hole-target")) missed.push("no hole");
            document.querySelector(".hole-target")?.dispatchEvent(new MouseEvent("click", { bubbles: true }));
            const tip = document.querySelector("[data-hole-tip]");
            const said = tip.getBoundingClientRect();
            for (const x of [said.left + 3, said.right - 3]) for (const y of [said.top + 3, said.bottom - 3])
                if (document.elementFromPoint(x, y) !== tip) missed.push(`what is said of it at ${x} ${y}`);
            return missed;
        }
        """;

    private const string TooLow = """
        () => [...document.querySelectorAll(".stages a, .settings a, .quiet, .sheet-bar button, .title-block button, .file, .ask select, .schedule select")]
            .map(each => ({ each, box: each.getBoundingClientRect() }))
            .filter(({ box }) => box.height < 40 && box.height > 0)
            .map(({ each, box }) => `${each.textContent.trim().slice(0, 30)}: ${box.height.toFixed(1)}`)
        """;

    [Theory]
    [InlineData(1024, 768, "en.mm.point.light")]
    [InlineData(768, 1024, "es.in.comma.dark")]
    public async Task AFingertipFindsWhatItAimsAt(int width, int height, string cookie)
    {
        await using OpenDesign open = await OpenAsync("outline", width, height, cookie);
        IPage page = open.Page;
        Assert.True(
            await page.EvaluateAsync<bool>("() => matchMedia('(pointer: coarse)').matches")
        );
        foreach (string stage in (string[])["outline", "action"])
        {
            await page.OpenAsync($"{browser.Shop.Address}/d/{open.Name}/{stage}");
            await page.Locator(".drawing input").First.WaitForAsync();
            await page.WaitForFunctionAsync(
                "() => !document.querySelector('.pending-drawing, .schedule.pending')",
                null,
                new() { Timeout = 100_000 }
            );
            string[] missed = await page.EvaluateAsync<string[]>(Missed);
            string[] low = await page.EvaluateAsync<string[]>(TooLow);
            Assert.True(missed.Length + low.Length == 0, string.Join('\n', missed.Concat(low)));
        }

        // The link of a stage needs no new page.
        await page.Locator(".stages a").Nth(5).ClickAsync();
        await page.Locator(".hole-target").First.WaitForAsync();
        await page.DrawnAsync();
        string[] holes = await page.EvaluateAsync<string[]>(MissedHoles);
        Assert.True(holes.Length == 0, string.Join('\n', holes));
    }

    [Fact]
    public async Task AFingerMovesAHandleFromBesideIt()
    {
        await using OpenDesign open = await OpenAsync("outline", 1024, 768, "en.mm.point.light");
        IPage page = open.Page;
        LocatorBoundingBoxResult area = (
            await page.Locator("[data-touch='lower_bout'][data-touch-axis='uy']").BoundingBoxAsync()
        )!;
        float x = area.X + area.Width - 3;
        float y = area.Y + 4;
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + 12, y, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await Expect(page.Field("outline.lower_bout.width")).Not.ToHaveValueAsync("368");
        // Taken up where it lies, not where the finger came down: it moves by what the finger moved.
        await Expect(page.Field("outline.lower_bout.at")).ToHaveValueAsync("356");
    }

    [Theory]
    [InlineData("en.mm.point.light")]
    [InlineData("es.in.comma.dark")]
    public async Task StagesAndSettingsAreInSightWithoutScrolling(string cookie)
    {
        await using OpenDesign open = await OpenAsync("outline", 1024, 768, cookie);
        string[] outside = await open.Page.EvaluateAsync<string[]>(
            """
            () => {
                const side = document.querySelector(".side");
                const found = [...side.querySelectorAll("a")]
                    .filter(each => {
                        const box = each.getBoundingClientRect();
                        return box.top < 0 || box.bottom > innerHeight + 0.5 || box.right > side.getBoundingClientRect().right + 0.5;
                    })
                    .map(each => each.textContent.trim());
                if (side.scrollHeight > side.clientHeight) found.push(`scrolls by ${side.scrollHeight - side.clientHeight}`);
                // The title block takes no more of the sheet than one line of words, in either language.
                const title = document.querySelector(".title-block").getBoundingClientRect();
                const inner = document.querySelector(".inner").getBoundingClientRect();
                if (title.height > 56 || title.left < inner.left) found.push(`title block of ${title.width.toFixed()} by ${title.height.toFixed()}`);
                return found;
            }
            """
        );
        Assert.Empty(outside);
    }

    private async Task<OpenDesign> OpenAsync(string stage, int width, int height, string cookie)
    {
        string name = browser.Shop.Add("heron", $"touch-{Guid.NewGuid():N}");
        IBrowserContext context = await browser.ContextAsync(
            width,
            height,
            cookie,
            browser.Shop.Address,
            isTablet: true
        );
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{browser.Shop.Address}/d/{name}/{stage}");
        return new OpenDesign(context, page, name);
    }
}
