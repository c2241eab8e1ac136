using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>Debian's Chromium, one for all tests; each test has a context of its own.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
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
    }

    public async Task<IBrowserContext> ContextAsync(
        int width = 1440,
        int height = 900,
        string cookie = "en.mm.point.light",
        string? address = null
    )
    {
        IBrowserContext context = await browser!.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
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
    }
}
