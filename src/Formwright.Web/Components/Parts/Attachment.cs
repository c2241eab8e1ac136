using Formwright.Web.Serving;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Formwright.Web.Components.Parts;

/// <summary>
/// What ties a drawing to the page's script. It may be let go at any time, also before it is tied: a hand that goes through the stages
/// leaves one before its script has answered.
/// </summary>
/// <typeparam name="T">The component whose methods the script calls.</typeparam>
internal sealed class Attachment<T>(T target, IJSRuntime js) : IAsyncDisposable
    where T : class
{
    private readonly DotNetObjectReference<T> self = DotNetObjectReference.Create(target);
    private IJSObjectReference? attached;
    private bool isLetGo;

    /// <summary>Ties the frame of the drawing.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="function">What of the script it is tied to.</param>
    public async Task Tie(ElementReference frame, string function = "attach")
    {
        try
        {
            await using IJSObjectReference module = await js.InvokeAsync<IJSObjectReference>(
                "import",
                PageAssets.Address("page.js")
            );
            if (!isLetGo)
            {
                attached = await module.InvokeAsync<IJSObjectReference>(function, frame, self);
            }

            if (isLetGo)
            {
                await Untie();
            }
        }
        catch (JSDisconnectedException)
        {
            // The tab is closed: there is nothing to tie to.
            isLetGo = true;
        }
    }

    public async ValueTask DisposeAsync()
    {
        isLetGo = true;
        await Untie();
        self.Dispose();
    }

    private async Task Untie()
    {
        (IJSObjectReference? tied, attached) = (attached, null);
        if (tied is null)
        {
            return;
        }

        try
        {
            await tied.InvokeVoidAsync("stop");
            await tied.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The tab is closed: nothing is left to untie.
            return;
        }
    }
}
