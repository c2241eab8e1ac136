using Microsoft.Playwright;

namespace Formwright.Web.Browser.Tests;

/// <summary>A design of its own that a test has open.</summary>
/// <param name="Context">The context of its page.</param>
/// <param name="Page">The page.</param>
/// <param name="Name">Its name in the folder.</param>
public sealed record OpenDesign(IBrowserContext Context, IPage Page, string Name) : IAsyncDisposable
{
    public ValueTask DisposeAsync() => Context.DisposeAsync();
}
