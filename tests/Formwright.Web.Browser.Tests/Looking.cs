using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>What the tests do on a page again and again.</summary>
internal static class Looking
{
    /// <summary>Opens a page and waits until it answers to a hand: its frame has told its size, so the circuit is up.</summary>
    public static async Task OpenAsync(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.LiveAsync();
    }

    public static Task LiveAsync(this IPage page) =>
        page.WaitForFunctionAsync(
            "() => (document.querySelector('[data-live=yes]') && (!document.querySelector('svg[data-drawing]') || document.querySelector('[data-sized]'))"
                + " || document.querySelector('.plain')) && !document.querySelector('.pending.wide')"
        );

    /// <summary>Waits for an address that ends so. A wait for a navigation can miss one inside the page that is over at once.</summary>
    public static Task AtAsync(this IPage page, string end) =>
        Assertions.Expect(page).ToHaveURLAsync(new Regex(Regex.Escape(end) + "$"));

    public static ILocator Field(this IPage page, string key) => page.Locator($"[id='f-{key}']");

    public static async Task<string> FigureAsync(this IPage page, string name) =>
        (await page.Locator($"[data-figure='{name}']").First.TextContentAsync())!;

    public static async Task SetAsync(this IPage page, string key, string value)
    {
        await page.Field(key).FillAsync(value);
        await page.Field(key).PressAsync("Enter");
    }

    /// <summary>Waits until what the frame shows is drawn for the frame as it is now: the page tells its size after the first drawing is laid out.</summary>
    public static async Task DrawnAsync(this IPage page)
    {
        const string isDrawn =
            "() => !document.querySelector('.pending.wide, .pending-drawing') && (document.querySelector('.views svg, svg[data-drawing], .paper svg'))";
        await page.WaitForFunctionAsync(isDrawn, null, new() { Timeout = 100_000 });
        await page.WaitForTimeoutAsync(150);
        await page.WaitForFunctionAsync(isDrawn, null, new() { Timeout = 100_000 });
    }

    /// <summary>Drags a handle by so many pixels.</summary>
    public static async Task DragAsync(
        this IPage page,
        string handle,
        string axis,
        float dx,
        float dy
    )
    {
        LocatorBoundingBoxResult box = (
            await page.Locator($"[data-handle='{handle}'][data-axis='{axis}']").BoundingBoxAsync()
        )!;
        float x = box.X + (box.Width / 2);
        float y = box.Y + (box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + dx, y + dy, new() { Steps = 8 });
        await page.Mouse.UpAsync();
    }
}
