using Formwright.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Formwright.Web.Serving;

/// <summary>Language, units and theme of the person at the page: kept in a cookie, followed by every request.</summary>
internal static class Preferences
{
    public static Task Follow(HttpContext context, RequestDelegate next)
    {
        Reader.Of(context).Apply();
        return next(context);
    }

    /// <summary><c>/set?language=es&amp;back=/</c> keeps a choice and returns to the page.</summary>
    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet(
            "/set",
            (
                HttpContext context,
                string? language,
                string? units,
                string? figures,
                string? theme,
                string? back
            ) =>
            {
                Reader now = Reader.Of(context);
                Reader wanted = now with
                {
                    Language = language is "en" or "es" ? language : now.Language,
                    Inches = units switch
                    {
                        "in" => true,
                        "mm" => false,
                        _ => now.Inches,
                    },
                    Comma = figures switch
                    {
                        "comma" => true,
                        "point" => false,
                        _ => now.Comma,
                    },
                    Theme = theme is "light" or "dark" or "auto" ? theme : now.Theme,
                };
                context.Response.Cookies.Append(
                    Reader.CookieName,
                    wanted.ToString(),
                    new CookieOptions
                    {
                        MaxAge = TimeSpan.FromDays(365),
                        SameSite = SameSiteMode.Strict,
                        HttpOnly = true,
                        IsEssential = true,
                    }
                );
                return Results.LocalRedirect(IsLocal(back) ? back! : "/");
            }
        );

    private static bool IsLocal(string? path) =>
        path is { Length: > 0 }
        && path[0] == '/'
        && !path.StartsWith("//", StringComparison.Ordinal)
        && !path.Contains('\\')
        && !path.Any(char.IsControl);
}
