using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>Debian's Chromium and one server, for all tests; each test has a context and a design of its own.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;
    private int designs;

    /// <summary>The server that most tests share; those that kill theirs start another.</summary>
    public Workshop Shop { get; } = new();

    public async ValueTask InitializeAsync()
    {
        Task serving = Shop.StartAsync();
        playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(40_000);
        browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = "/usr/bin/chromium",
                Args =
                [
                    "--no-sandbox",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                ],
            }
        );
        await serving;
    }

    /// <summary>A fresh copy of Heron on one of its stages, ready for a hand.</summary>
    public async Task<OpenDesign> OpenAsync(string stage, string cookie = "en.mm.point.light")
    {
        string name = Shop.Add("heron", $"heron{Interlocked.Increment(ref designs)}");
        IBrowserContext context = await ContextAsync(cookie: cookie, address: Shop.Address);
        IPage page = await context.NewPageAsync();
        await page.OpenAsync($"{Shop.Address}/d/{name}/{stage}");
        return new OpenDesign(context, page, name);
    }

    public async Task<IBrowserContext> ContextAsync(
        int width = 1440,
        int height = 900,
        string cookie = "en.mm.point.light",
        string? address = null,
        bool isTablet = false
    )
    {
        IBrowserContext context = await browser!.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
                HasTouch = isTablet,
                IsMobile = isTablet,
            }
        );
        context.SetDefaultTimeout(60_000);
        if (address is not null)
        {
            await context.AddCookiesAsync([
                new()
                {
                    Name = "formwright",
                    Value = cookie,
                    Url = address,
                },
            ]);
        }

        return context;
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        await Shop.DisposeAsync();
    }
}
