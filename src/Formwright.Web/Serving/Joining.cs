using System.Net;
using System.Text;
using Formwright.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Formwright.Web.Serving;

/// <summary>The one page that a device sees before it has joined: a code and a name, sent as a plain form.</summary>
internal static class Joining
{
    public const string Path = "/join";

    private static readonly TimeSpan CookieLasts = TimeSpan.FromDays(30);

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet(
            Path,
            (HttpContext context, string? code) => Page(context, code ?? "", isRefused: false)
        );
        app.MapPost(
                Path,
                async (HttpContext context, Devices devices) =>
                {
                    IFormCollection form = await context.Request.ReadFormAsync();
                    string? secret = devices.Join(form["code"].ToString(), form["name"].ToString());
                    if (secret is null)
                    {
                        return Page(context, "", isRefused: true);
                    }

                    context.Response.Cookies.Append(
                        Devices.CookieName,
                        secret,
                        new CookieOptions
                        {
                            HttpOnly = true,
                            SameSite = SameSiteMode.Strict,
                            MaxAge = CookieLasts,
                            IsEssential = true,
                        }
                    );
                    return Results.LocalRedirect("/");
                }
            )
            // The origin is checked for every request, and there is nobody yet whom a forged form could harm.
            .DisableAntiforgery();
    }

    private static IResult Page(HttpContext context, string code, bool isRefused)
    {
        // A form that is sent without a referrer names no origin, and would be refused by our own guard.
        context.Response.Headers["Referrer-Policy"] = "same-origin";
        Reader reader = Reader.Of(context);
        string refused = isRefused
            ? $"<p class=\"fault\" role=\"alert\">{Text("join.refused")}</p>"
            : "";
        string html = $"""
            <!DOCTYPE html>
            <html lang="{reader.Language}" data-theme="{reader.Theme}">
            <head>
            <meta charset="utf-8" /><meta name="viewport" content="width=device-width, initial-scale=1" />
            <title>{Text("join.title")} · {Text("product")}</title>
            <link rel="stylesheet" href="{PageAssets.Address("page.css")}" />
            </head>
            <body class="join">
            <main class="frame"><div class="inner">
            <h1>{Text("join.title")}</h1>
            <p>{Text("join.how")}</p>
            {refused}
            <form method="post" action="{Path}">
            <label>{Text("join.code")} <input class="length set text" name="code" value="{Html(
                code
            )}" maxlength="20" autocomplete="off" autocapitalize="characters" required /></label>
            <label>{Text(
                "join.name"
            )} <input class="length set text" name="name" maxlength="40" autocomplete="off" required /></label>
            <button>{Text("join.do")}</button>
            </form>
            </div></main>
            </body>
            </html>
            """;
        return Results.Text(
            html,
            "text/html; charset=utf-8",
            Encoding.UTF8,
            isRefused ? StatusCodes.Status403Forbidden : StatusCodes.Status200OK
        );
    }

    private static string Text(string key) => Html(WebWords.Of[key]);

    private static string Html(string text) => WebUtility.HtmlEncode(text);
}
