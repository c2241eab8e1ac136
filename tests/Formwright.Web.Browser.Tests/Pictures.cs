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

        string folder = Repository.PathOf("docs", "pictures", "page");
        Directory.CreateDirectory(folder);
        await using Workshop shop = new("heron", "dunlin", "plover");
        await shop.StartAsync();
        foreach ((int width, int height) in ((int, int)[])[(1440, 900), (1280, 800), (1024, 768), (768, 1024)])
        {
            await using IBrowserContext context = await browser.ContextAsync(width, height, address: shop.Address);
            IPage page = await context.NewPageAsync();
            foreach (string path in (string[])["", "d/heron/outline", "d/heron/action", "d/heron/workboard", "d/heron/mould", "d/heron/sheets"])
            {
                await page.OpenAsync($"{shop.Address}/{path}");
                await page.WaitForTimeoutAsync(700);
                string name = path.Length == 0 ? "instruments" : path.Split('/')[^1];
                await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{width}.png") });
            }
        }

        await using IBrowserContext dark = await browser.ContextAsync(cookie: "es.mm.comma.dark", address: shop.Address);
        IPage night = await dark.NewPageAsync();
        foreach (string stage in (string[])["outline", "action"])
        {
            await night.OpenAsync($"{shop.Address}/d/heron/{stage}");
            await night.WaitForTimeoutAsync(700);
            await night.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{stage}-dark.png") });
        }
    }
}
