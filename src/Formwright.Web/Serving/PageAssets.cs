using System.Reflection;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Formwright.Web.Serving;

/// <summary>Style, script and face, out of this assembly.</summary>
internal static class PageAssets
{
    private const string Folder = "Assets/";

    private static readonly Dictionary<string, byte[]> Files = Read();

    private static readonly string Version = Convert.ToHexStringLower(
        SHA256.HashData([
            .. Files
                .Where(file => !file.Key.EndsWith(".ttf", StringComparison.Ordinal))
                .OrderBy(file => file.Key, StringComparer.Ordinal)
                .SelectMany(file => file.Value),
        ])
    )[..12];

    /// <summary>Address of a file; another text has another address.</summary>
    public static string Address(string name) => $"/assets/{Version}/{name}";

    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet(
            "/assets/{version}/{name}",
            (string name, HttpContext context) =>
            {
                if (!Files.TryGetValue(name, out byte[]? bytes))
                {
                    return Results.NotFound();
                }

                context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
                return Results.Bytes(bytes, TypeOf(name));
            }
        );

    private static string TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            _ => "font/ttf",
        };

    private static Dictionary<string, byte[]> Read()
    {
        Assembly here = typeof(PageAssets).Assembly;
        Dictionary<string, byte[]> files = new(StringComparer.Ordinal);
        foreach (
            string name in here.GetManifestResourceNames()
                .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
        )
        {
            using Stream from = here.GetManifestResourceStream(name)!;
            using MemoryStream bytes = new();
            from.CopyTo(bytes);
            files[name[Folder.Length..]] = bytes.ToArray();
        }

        return files;
    }
}
