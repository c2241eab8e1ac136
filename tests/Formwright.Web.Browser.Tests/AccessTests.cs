using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>Every page, in both themes, without a violation of axe's rules.</summary>
public sealed class AccessTests(Browser browser)
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
            AxeResult result = await page.RunAxe();
            found.AddRange(
                result.Violations.SelectMany(violation =>
                    violation.Nodes.Select(node =>
                        $"{path} {violation.Id}: {node.Html[..Math.Min(node.Html.Length, 160)]} {string.Join(' ', node.Any.Select(check => check.Message))}"
                    )
                )
            );
        }

        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
