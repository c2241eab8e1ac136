using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

/// <summary>The drawing of every stage is in sight whole, and every sheet of the pack is on the list.</summary>
public sealed class SightTests(Browser browser)
{
    // What is wrong with what the frame shows: cut off, under the title block, letters too small, to be scrolled.
    private const string Faults = """
        () => {
            const faults = [];
            const inner = document.querySelector(".inner").getBoundingClientRect();
            const title = document.querySelector(".title-block").getBoundingClientRect();
            const views = document.querySelector(".views");
            const isText = views?.classList.contains("text");
            const where = box => `${box.left.toFixed()} ${box.top.toFixed()} ${box.right.toFixed()} ${box.bottom.toFixed()}`;
            const marks = document.querySelectorAll(isText ? ".views svg text" : ".views svg, [data-drawing] path.outline, [data-drawing] text, .paper svg");
            if (!isText && views && views.scrollHeight > views.clientHeight + 1) faults.push("scrolls");
            for (const mark of marks) {
                const box = mark.getBoundingClientRect();
                // What was put aside until it is pointed at.
                if (box.width === 0 || (mark.tagName === "text" && (!mark.textContent.trim() || +mark.getAttribute("x") < 0))) continue;
                const scale = mark.getScreenCTM().a || Math.abs(mark.getScreenCTM().b);
                const letters = mark.closest(".paper") ? 99 : mark.tagName === "text" ? parseFloat(getComputedStyle(mark).fontSize) * Math.hypot(mark.getScreenCTM().a, mark.getScreenCTM().b)
                    : Math.min(99, ...[...mark.querySelectorAll("text")].map(text => parseFloat(getComputedStyle(text).fontSize) * scale));
                if (letters < 10.9) faults.push(`letters of ${letters.toFixed(1)}`);
                if (isText) continue;
                if (box.left < inner.left - 1 || box.right > inner.right + 1 || box.top < inner.top - 1 || box.bottom > inner.bottom + 1) faults.push(`outside ${where(box)} of ${where(inner)} ${mark.textContent.slice(0, 40)}`);
                if (box.right > title.left + 1 && box.bottom > title.top + 1 && box.left < title.right && box.top < title.bottom) faults.push(`under the title block ${where(box)} ${mark.textContent.slice(0, 40)}`);
            }
            if (marks.length === 0) faults.push("empty");
            return faults;
        }
        """;

    [Theory]
    [InlineData(1280, 800, "en.mm.point.light", 8)]
    [InlineData(1024, 768, "en.mm.point.light", 3)]
    [InlineData(768, 1024, "es.in.comma.dark", 2)]
    public async Task TheWholeDrawingOfEveryStageIsInSight(
        int width,
        int height,
        string cookie,
        int most
    )
    {
        string name = browser.Shop.Add("heron", $"sight-{width}");
        await File.AppendAllTextAsync(browser.Shop.PathOf(name), "\n[jig]\nmake = true\n");
        await using IBrowserContext context = await browser.ContextAsync(
            width,
            height,
            cookie,
            browser.Shop.Address
        );
        IPage page = await context.NewPageAsync();
        List<string> faults = [];
        foreach (string stage in AccessTests.Stages)
        {
            await page.OpenAsync($"{browser.Shop.Address}/d/{name}/{stage}");
            int parts = Math.Max(1, await page.Locator("[data-part]").CountAsync());
            for (int part = 0; part < parts; part++)
            {
                if (parts > 1)
                {
                    ILocator button = page.Locator("[data-part]").Nth(part);
                    await button.ClickAsync();
                    string id = (await button.GetAttributeAsync("data-part"))!;
                    await Expect(page.Locator($"[data-view-of='{id} 0']")).ToBeVisibleAsync();
                }

                await page.DrawnAsync();
                int views = Math.Max(1, await page.Locator("[data-view]").CountAsync());
                for (int view = 0; view < Math.Min(views, most); view++)
                {
                    if (view > 0)
                    {
                        await page.Locator($"[data-view='{view}']").ClickAsync();
                        await Expect(page.Locator($"[data-view-of$=' {view}']")).ToBeVisibleAsync();
                        await page.DrawnAsync();
                    }

                    string[] found = await page.EvaluateAsync<string[]>(Faults);
                    faults.AddRange(found.Select(fault => $"{stage} {part} {view}: {fault}"));
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
    }

    // Names whose letters, as they stand, meet a line, the box of builds or another name.
    private const string Touching = """
        () => {
            const chart = document.querySelector("svg[data-drawing]");
            const ofChart = [...chart.querySelectorAll("path.plot, path.dimension, path.build-box, text.second")];
            const corners = text => {
                const { x, y, width, height } = text.getBBox();
                const to = text.getScreenCTM();
                // The box has room for accents and descenders that figures and names don't fill.
                return [[x, y + height * 0.2], [x + width, y + height * 0.2], [x + width, y + height * 0.85], [x, y + height * 0.85]].map(([px, py]) => new DOMPoint(px, py).matrixTransform(to));
            };
            const within = (p, box) => {
                let sign = 0;
                for (let i = 0; i < 4; i++) {
                    const [a, b] = [box[i], box[(i + 1) % 4]];
                    const side = Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
                    if (side && sign && side !== sign) return false;
                    sign = side || sign;
                }
                return true;
            };
            const names = ofChart.filter(each => each.tagName === "text" && each.getScreenCTM() && each.getBoundingClientRect().top > innerHeight * 0.45);
            const lines = ofChart.filter(each => each.tagName === "path" && each.getBoundingClientRect().bottom > innerHeight * 0.45);
            const faults = [];
            for (const name of names) {
                const box = corners(name);
                for (const line of lines) {
                    const to = line.getScreenCTM();
                    const length = line.getTotalLength();
                    for (let at = 0; at <= length; at += 1) {
                        const p = line.getPointAtLength(at).matrixTransform(to);
                        if (within(p, box)) { faults.push(`'${name.textContent}' touches a line`); break; }
                    }
                }
                for (const other of names) {
                    if (other !== name && corners(other).some(p => within(p, box))) faults.push(`'${name.textContent}' touches '${other.textContent}'`);
                }
            }
            return names.length < 10 || lines.length < 4 ? ["no chart"] : faults;
        }
        """;

    [Theory]
    [InlineData(1440, 900, "en.mm.point.light")]
    [InlineData(1280, 800, "es.in.comma.dark")]
    [InlineData(1024, 768, "en.mm.point.light")]
    [InlineData(768, 1024, "es.mm.comma.light")]
    public async Task NoNameOfTheChartTouchesALine(int width, int height, string cookie)
    {
        string name = browser.Shop.Add("heron", $"chart-{width}");
        await using IBrowserContext context = await browser.ContextAsync(
            width,
            height,
            cookie,
            browser.Shop.Address
        );
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{browser.Shop.Address}/d/{name}/action");
        foreach (string ramp in (string[])["1.5", "0", "3.4"])
        {
            await page.SetAsync("neck.ramp", $"{ramp} mm");
            await browser.Shop.FileSaysAsync(name, $"ramp = {ramp}");
            await page.DrawnAsync();
            string[] touching = await page.EvaluateAsync<string[]>(Touching);
            Assert.True(touching.Length == 0, string.Join('\n', touching));
        }
    }

    [Fact]
    public async Task TheListHasEverySheetOfThePack()
    {
        await using OpenDesign open = await browser.OpenAsync("sheets");
        IPage page = open.Page;
        await Expect(page.Locator("[data-whole='yes']"))
            .ToBeVisibleAsync(new() { Timeout = 100_000 });
        string[] listed = await page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('[data-sheet-row]')].map((row, i) => `${String(i + 1).padStart(2, '0')}-${row.dataset.sheetRow}`)"
        );
        IAPIResponse pack = await open.Context.APIRequest.GetAsync(
            $"{browser.Shop.Address}/files/{open.Name}/pack.zip",
            new() { Timeout = 200_000 }
        );
        using System.IO.Compression.ZipArchive zip = new(
            new MemoryStream(await pack.BodyAsync()),
            System.IO.Compression.ZipArchiveMode.Read
        );
        Assert.Equal(
            zip.Entries.Select(entry => entry.FullName.Replace('\\', '/'))
                .Where(path =>
                    path.StartsWith("sheets/", StringComparison.Ordinal)
                    && path.EndsWith(".pdf", StringComparison.Ordinal)
                )
                .Select(path => path["sheets/".Length..^".pdf".Length])
                .Order(StringComparer.Ordinal),
            listed
        );

        // The last one is a nest; it is shown and downloaded like any other.
        string last = listed[^1][3..];
        Assert.StartsWith("nest-", last);
        await page.Locator($"[data-sheet-row='{last}'] button").ClickAsync();
        await Expect(page.Locator($"[data-sheet='{last}'] svg")).ToBeVisibleAsync();
        IAPIResponse pdf = await open.Context.APIRequest.GetAsync(
            $"{browser.Shop.Address}/files/{open.Name}/{last}.pdf"
        );
        Assert.Equal(200, pdf.Status);
    }
}
