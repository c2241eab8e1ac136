using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

/// <summary>Every page, in both themes, without a violation of axe's rules.</summary>
public sealed partial class AccessTests(Browser browser)
{
    internal static readonly string[] Stages =
    [
        "outline",
        "action",
        "body",
        "neck",
        "wood",
        "workboard",
        "mould",
        "jig",
        "stock",
        "sheets",
    ];

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public async Task NoPageHasAViolation(string theme)
    {
        Workshop shop = browser.Shop;
        string name = shop.Add("heron", "heron-" + theme);
        await using IBrowserContext context = await browser.ContextAsync(
            cookie: $"en.mm.point.{theme}",
            address: shop.Address
        );
        IPage page = await context.NewPageAsync();
        List<string> found = [];
        foreach (
            string path in (string[])
                ["/", "/missing", .. Stages.Select(stage => $"/d/{name}/{stage}")]
        )
        {
            await page.OpenAsync(shop.Address + path);
            found.AddRange(await ViolationsAsync(page, path));
        }

        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    // A page that is behind is soon gone: it is kept as it stood when it first showed that, and looked at at leisure.
    [Theory]
    [InlineData("light", "action", "neck.ramp", 2)]
    [InlineData("dark", "action", "neck.ramp", 2)]
    [InlineData("light", "workboard", "workboard.margin", 60)]
    [InlineData("dark", "workboard", "workboard.margin", 60)]
    public async Task APageThatIsBehindHasNoViolation(
        string theme,
        string stage,
        string key,
        double first
    )
    {
        await using OpenDesign open = await browser.OpenAsync(stage, $"en.mm.point.{theme}");
        IPage page = open.Page;
        await page.WaitForFunctionAsync(
            "() => !document.querySelector('.pending, .pending-drawing')",
            null,
            new() { Timeout = 100_000 }
        );
        await page.EvaluateAsync(
            """
            drawing => {
                new MutationObserver((_, watch) => {
                    const wanted = drawing ? ".pending-drawing[data-pending]" : ".schedule.pending, p.pending";
                    if (!document.querySelector(wanted)) return;
                    watch.disconnect();
                    window.behind = document.documentElement.outerHTML;
                }).observe(document.body, { subtree: true, childList: true, attributes: true });
            }
            """,
            stage == "workboard"
        );
        // What is drawn before the page says that it is behind is not behind: then another change is made.
        string? behind = null;
        for (int i = 0; i < 10 && behind is null; i++)
        {
            string value = (first + (i / 4.0)).ToString(CultureInfo.InvariantCulture);
            await page.SetAsync(key, value);
            await browser.Shop.FileSaysAsync(open.Name, $" = {value}");
            await page.WaitForTimeoutAsync(1000);
            behind = await page.EvaluateAsync<string?>("() => window.behind ?? null");
        }

        Assert.NotNull(behind);
        await page.SetContentAsync(Script().Replace(behind, ""));
        await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
        string mark = stage == "workboard" ? ".pending-drawing" : ".schedule.pending .figure";
        await Expect(page.Locator(mark).First).ToBeVisibleAsync();
        // Told apart by more than its colour: letters lean, and over a drawing it is said.
        Assert.Equal(
            stage == "workboard" ? "\"being worked out …\"" : "italic",
            await page.EvaluateAsync<string>(
                stage == "workboard"
                    ? "mark => getComputedStyle(document.querySelector(mark), '::after').content"
                    : "mark => getComputedStyle(document.querySelector(mark)).fontStyle",
                mark
            )
        );
        List<string> found = [.. await ViolationsAsync(page, stage)];
        found.AddRange(await page.EvaluateAsync<string[]>(Pale));
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    [Theory]
    [InlineData("es.mm.comma.light", "/", "Elegir un archivo")]
    [InlineData("en.mm.point.dark", "/d/{0}/outline", "Lay a trace over it")]
    public async Task AFileIsChosenInThePagesOwnWordsAndByKeys(
        string cookie,
        string path,
        string said
    )
    {
        await using OpenDesign open = await browser.OpenAsync("outline", cookie);
        IPage page = open.Page;
        await page.OpenAsync(
            browser.Shop.Address + path.Replace("{0}", open.Name, StringComparison.Ordinal)
        );
        await page.WaitForFunctionAsync("() => !document.querySelector('.pending')");
        ILocator input = page.GetByLabel(said);
        await Expect(input).ToHaveAttributeAsync("type", "file");
        LocatorBoundingBoxResult box = (await input.BoundingBoxAsync())!;
        Assert.True(box.Width <= 1 && box.Height <= 1, "what the browser writes on it is not seen");
        await input.FocusAsync();
        await page.Keyboard.PressAsync("Shift+Tab");
        await page.Keyboard.PressAsync("Tab");
        await Expect(input).ToBeFocusedAsync();
        Assert.Equal(
            "solid",
            await page.Locator(".file")
                .EvaluateAsync<string>("label => getComputedStyle(label).outlineStyle")
        );
        // What opens the browser's dialog is the click that a key makes; the dialog itself is not wanted here.
        await input.EvaluateAsync(
            "input => input.addEventListener('click', click => { click.preventDefault(); window.opened = true; })"
        );
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForFunctionAsync("() => window.opened");
    }

    [Fact]
    public async Task AKeyLeadsPastALongListToTheSchedules()
    {
        await using OpenDesign open = await browser.OpenAsync("outline");
        IPage page = open.Page;
        foreach (string path in (string[])["/", $"/d/{open.Name}/outline"])
        {
            await page.OpenAsync(browser.Shop.Address + path);
            await page.Keyboard.PressAsync("Tab");
            await Expect(page.Locator(".skip")).ToBeFocusedAsync();
            await page.Keyboard.PressAsync("Enter");
            await Expect(page.Locator(".schedules")).ToBeFocusedAsync();
        }
    }

    // Axe leaves letters in drawings and made content aside: contrast of what is behind, by the formula of WCAG 2.2, 1.4.3.
    private const string Pale = """
        () => {
            const light = colour => {
                const [r, g, b] = colour.match(/[\d.]+/g).map(each => +each / 255).map(each => each <= 0.04045 ? each / 12.92 : ((each + 0.055) / 1.055) ** 2.4);
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
            };
            const ground = element => {
                for (let each = element; each; each = each.parentElement) {
                    const colour = getComputedStyle(each).backgroundColor;
                    if (!/, 0\)$/.test(colour)) return colour;
                }
                return "rgb(255, 255, 255)";
            };
            const pale = [];
            const look = (name, style, on) => {
                const [a, b] = [light(style.color), light(on)].sort((x, y) => y - x);
                const contrast = (a + 0.05) / (b + 0.05);
                if (contrast < 4.5) pale.push(`${name}: contrast ${contrast.toFixed(2)}`);
            };
            for (const each of document.querySelectorAll(".pending, .pending .figure, .pending-drawing, .pending-drawing text, .pending-drawing figcaption")) {
                for (let up = each; up; up = up.parentElement) if (+getComputedStyle(up).opacity < 1) pale.push(`${each.className}: faded`);
                look(each.className, getComputedStyle(each), ground(each));
                const after = getComputedStyle(each, "::after");
                if (after.content !== "none") look("what is said over it", after, after.backgroundColor);
            }
            return pale;
        }
        """;

    [GeneratedRegex("<script.*?</script>", RegexOptions.Singleline)]
    private static partial Regex Script();

    private static async Task<IEnumerable<string>> ViolationsAsync(IPage page, string where)
    {
        // Only what is wrong is worked out: to describe all that is right takes several times as long.
        AxeResult result = await page.RunAxe(
            new AxeRunOptions { ResultTypes = [ResultType.Violations] }
        );
        return result.Violations.SelectMany(violation =>
            violation.Nodes.Select(node =>
                $"{where} {violation.Id}: {node.Html[..Math.Min(node.Html.Length, 160)]} {string.Join(' ', node.Any.Select(check => check.Message))}"
            )
        );
    }
}
