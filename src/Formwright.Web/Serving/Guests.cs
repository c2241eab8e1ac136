using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Formwright.Web.Serving;

/// <summary>Tells requests that came by the shared listener from those of the shop's own computer, and lets only joined devices further.</summary>
internal static class Guests
{
    private static readonly object Mark = new();

    /// <summary>Marks every connection of a listener as one from outside, whatever its address.</summary>
    public static void MarkAll(ListenOptions listener) =>
        listener.Use(next =>
            connection =>
            {
                connection.Items[Mark] = true;
                return next(connection);
            }
        );

    /// <summary>Whether a request came by the shared listener.</summary>
    public static bool IsGuest(HttpContext context) =>
        context.Features.Get<IConnectionItemsFeature>()?.Items.ContainsKey(Mark) == true;

    /// <summary>Before it has joined a device sees the joining page and its style, nothing else; the shop's own pages it never sees.</summary>
    public static async Task Check(HttpContext context, RequestDelegate next, Devices devices)
    {
        PathString path = context.Request.Path;
        if (!IsGuest(context) || path == Joining.Path || path.StartsWithSegments("/assets"))
        {
            await next(context);
            return;
        }

        if (path.StartsWithSegments("/share"))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        if (devices.Find(context.Request.Cookies[Devices.CookieName]) is not { } device)
        {
            if (HttpMethods.IsGet(context.Request.Method) && !context.WebSockets.IsWebSocketRequest)
            {
                context.Response.Redirect(Joining.Path);
            }
            else
            {
                context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            }

            return;
        }

        // A live page is one long request: sent away, it ends.
        using CancellationTokenRegistration _ = device.Gone.Token.Register(context.Abort);
        await next(context);
    }
}
