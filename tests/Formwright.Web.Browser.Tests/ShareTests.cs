using System.Net;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Formwright.Web.Browser.Tests;

/// <summary>A device that joins, on loopback addresses only: the shared listener treats whoever comes by it as one from outside.</summary>
public sealed class ShareTests(Browser browser)
{
    [Fact]
    public async Task ADeviceJoinsWithTheCodeAndCanBeSentAway()
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync("--share-on", "127.0.0.1");
        string outside = $"http://127.0.0.1:{shop.Port + 1}";
        await using IBrowserContext own = await browser.ContextAsync(address: shop.Address);
        IPage office = await own.NewPageAsync();
        await office.OpenAsync(shop.Address + "/share");
        await Expect(office.Locator("svg.qr path")).ToBeAttachedAsync();
        string code = (await office.Locator("[data-code]").TextContentAsync())!;

        await using IBrowserContext bench = await browser.ContextAsync(1024, 768);
        IPage tablet = await bench.NewPageAsync();
        await tablet.GotoAsync(outside + "/d/heron/outline");
        Assert.EndsWith("/join", tablet.Url);
        await tablet.Locator("[name=code]").FillAsync("ABCD-2345");
        await tablet.Locator("[name=name]").FillAsync("bench tablet");
        await tablet.Locator("form button").ClickAsync();
        await Expect(tablet.Locator("[role=alert]")).ToBeVisibleAsync();
        await tablet.GotoAsync($"{outside}/join?code={code}");
        await tablet.Locator("[name=name]").FillAsync("bench tablet");
        await tablet.Locator("form button").ClickAsync();
        await tablet.OpenAsync(outside + "/d/heron/outline");
        await tablet.SetAsync("outline.waist.width", "240");
        await shop.FileSaysAsync("heron", "width = 240");
        IAPIResponse shut = await bench.APIRequest.GetAsync(outside + "/share");
        Assert.Equal(404, shut.Status);

        ILocator device = office.Locator("[data-device='bench tablet']");
        await Expect(device).ToBeVisibleAsync();
        await Expect(office.Locator("[data-code]")).ToHaveCountAsync(0);
        await device.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(device).ToHaveCountAsync(0);
        await Expect(tablet.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await tablet.GotoAsync(outside + "/");
        Assert.EndsWith("/join", tablet.Url);
    }

    [Fact]
    public async Task WhoeverHasNotJoinedSeesNothing()
    {
        await using Workshop shop = new("heron");
        await shop.StartAsync("--share-on", "127.0.0.1");
        using HttpClient client = new(new HttpClientHandler { AllowAutoRedirect = false });
        async Task<HttpStatusCode> Ask(HttpMethod how, string path, string? host = null)
        {
            using HttpRequestMessage request = new(how, $"http://127.0.0.1:{shop.Port + 1}{path}");
            request.Headers.Host = host;
            request.Headers.TryAddWithoutValidation(
                "Cookie",
                "formwright-device=" + new string('0', 64)
            );
            using HttpResponseMessage got = await client.SendAsync(
                request,
                TestContext.Current.CancellationToken
            );
            return got.StatusCode;
        }

        Assert.Equal(HttpStatusCode.Redirect, await Ask(HttpMethod.Get, "/"));
        Assert.Equal(
            HttpStatusCode.Redirect,
            await Ask(HttpMethod.Get, "/files/heron/outline.svg")
        );
        Assert.Equal(HttpStatusCode.NotFound, await Ask(HttpMethod.Get, "/share"));
        Assert.Equal(HttpStatusCode.Unauthorized, await Ask(HttpMethod.Post, "/_blazor/negotiate"));
        Assert.Equal(HttpStatusCode.Forbidden, await Ask(HttpMethod.Get, "/join", "evil.example"));
        Assert.Equal(HttpStatusCode.OK, await Ask(HttpMethod.Get, "/join"));
    }
}
