using System.Net;
using System.Net.WebSockets;
using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

public sealed class SafetyTests(Browser browser)
{
    [Fact]
    public async Task ForeignHostsAndOriginsAreRefused()
    {
        Workshop shop = browser.Shop;
        shop.Add("heron", "guarded");
        using HttpClient client = new();
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(client, shop, "/", []));
        Assert.Equal(
            HttpStatusCode.Forbidden,
            await StatusAsync(client, shop, "/", [("Host", "evil.example")])
        );
        Assert.Equal(
            HttpStatusCode.Forbidden,
            await StatusAsync(client, shop, "/", [("Origin", "http://evil.example")])
        );
        Assert.Equal(
            HttpStatusCode.Forbidden,
            await StatusAsync(client, shop, "/", [("Origin", "null")])
        );
        Assert.Equal(
            HttpStatusCode.Forbidden,
            await StatusAsync(
                client,
                shop,
                "/files/guarded/outline.svg",
                [("Sec-Fetch-Site", "cross-site")]
            )
        );

        using ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Origin", "http://evil.example");
        await Assert.ThrowsAnyAsync<WebSocketException>(() =>
            socket.ConnectAsync(
                new Uri($"ws://127.0.0.1:{shop.Port}/_blazor"),
                TestContext.Current.CancellationToken
            )
        );
    }

    [Theory]
    [InlineData("/d/..%2f..%2fetc%2fpasswd/outline")]
    [InlineData("/files/..%2f..%2fsecret/outline.svg")]
    [InlineData("/files/%2e%2e/outline.svg")]
    [InlineData("/files/heron/..%2f..%2fheron.svg")]
    [InlineData("/assets/x/..%2fFormwright.Web.dll")]
    [InlineData("/d/link/outline")]
    public async Task NoPathLeadsOutOfTheFolder(string path)
    {
        Workshop shop = browser.Shop;
        string outside = Path.Combine(Path.GetTempPath(), $"outside-{Guid.NewGuid():N}.toml");
        File.WriteAllText(outside, "secret = 1");
        File.Delete(shop.PathOf("link"));
        File.CreateSymbolicLink(shop.PathOf("link"), outside);
        using HttpClient client = new();
        using HttpResponseMessage got = await client.GetAsync(
            new Uri(shop.Address + path),
            TestContext.Current.CancellationToken
        );
        string body = await got.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("secret", body);
        Assert.DoesNotContain("root:", body);
        Assert.True(
            got.StatusCode == HttpStatusCode.NotFound
                || body.Contains("Nothing here", StringComparison.Ordinal),
            $"{got.StatusCode}"
        );
        File.Delete(outside);
    }

    [Fact]
    public async Task ThePolicyHoldsAndNothingComesFromElsewhere()
    {
        Workshop shop = browser.Shop;
        shop.Add("heron", "watched");
        await using IBrowserContext context = await browser.ContextAsync(address: shop.Address);
        IPage page = await context.NewPageAsync();
        List<string> asked = [];
        List<string> complaints = [];
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                complaints.Add(message.Text);
            }
        };
        await page.OpenAsync($"{shop.Address}/d/watched/outline");
        await page.SetAsync("outline.waist.width", "238");
        await page.OpenAsync($"{shop.Address}/d/watched/sheets");
        Assert.All(
            asked,
            url =>
                Assert.StartsWith(
                    shop.Address,
                    url.Replace("ws://", "http://", StringComparison.Ordinal)
                )
        );
        Assert.Empty(complaints);
        IResponse? response = await page.GotoAsync(shop.Address);
        string policy = (await response!.AllHeadersAsync())["content-security-policy"];
        Assert.Contains("script-src 'self'", policy);
        Assert.DoesNotContain("unsafe", policy);
    }

    private static async Task<HttpStatusCode> StatusAsync(
        HttpClient client,
        Workshop shop,
        string path,
        (string Name, string Value)[] headers
    )
    {
        using HttpRequestMessage request = new(
            HttpMethod.Get,
            $"http://127.0.0.1:{shop.Port}{path}"
        );
        foreach ((string name, string value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using HttpResponseMessage response = await client.SendAsync(request);
        return response.StatusCode;
    }
}
