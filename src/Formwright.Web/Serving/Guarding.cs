using System.Net;
using Microsoft.AspNetCore.Http;

namespace Formwright.Web.Serving;

/// <summary>
/// Refuses whatever does not come from this server's own page: a foreign host name (a name that someone else points at this machine)
/// or a foreign origin (another site's page that calls this server), for pages, downloads and the live connection alike.
/// </summary>
internal static class Guarding
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    private static readonly string[] OwnHosts = ["localhost", "127.0.0.1", "[::1]"];

    public static Task Check(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        if (!IsOwnHost(context) || !IsOwnOrigin(request))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return Task.CompletedTask;
        }

        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        return next(context);
    }

    // A device of the shop opens this computer by the very address that it reached, never by a name that someone could point elsewhere.
    private static bool IsOwnHost(HttpContext context)
    {
        string host = context.Request.Host.Host;
        IPAddress? here = context.Connection.LocalIpAddress;
        return !Guests.IsGuest(context) || (here is not null && IPAddress.IsLoopback(here))
            ? OwnHosts.Contains(host, StringComparer.OrdinalIgnoreCase)
            : IPAddress.TryParse(host, out IPAddress? named)
                && (named.Equals(here) || named.Equals(here?.MapToIPv4()));
    }

    // A browser names the origin on every request that another site could forge; one that is named must be ours.
    private static bool IsOwnOrigin(HttpRequest request)
    {
        string origin = request.Headers.Origin.ToString();
        if (origin.Length > 0)
        {
            return string.Equals(
                origin,
                $"{request.Scheme}://{request.Host.Value}",
                StringComparison.OrdinalIgnoreCase
            );
        }

        string site = request.Headers["Sec-Fetch-Site"].ToString();
        bool isPageOpened =
            HttpMethods.IsGet(request.Method) && request.Headers["Sec-Fetch-Mode"] == "navigate";
        return site is "" or "same-origin" or "none" || isPageOpened;
    }
}
