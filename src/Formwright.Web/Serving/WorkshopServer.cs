using System.Net;
using Formwright.Web.Components;
using Formwright.Web.Designs;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Formwright.Web.Serving;

/// <summary>The server of the page. It listens on the loopback address only, unless sharing was asked for, and asks nothing of any other machine.</summary>
public static class WorkshopServer
{
    /// <summary>Largest message that a page may send, bytes: a handle's place or a field, never a file.</summary>
    private const int MostMessageBytes = 64 * 1024;

    private const int ThreadsBehindThePage = 8;

    /// <summary>Serves until it is told to stop (Ctrl+C, or a signal).</summary>
    /// <param name="options">What to serve.</param>
    /// <param name="started">Told the page's address, and the first code where it is shared, once it answers.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="IOException">The folder can't be made, or the port is taken.</exception>
    public static async Task RunAsync(
        ServeOptions options,
        Action<string, string?> started,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(started);
        // Sheets, nests and studies are made behind the page and hold a thread each; a hand must not wait for one.
        ThreadPool.SetMinThreads(Environment.ProcessorCount + ThreadsBehindThePage, 4);
        await using WebApplication app = Build(options);
        // The outlines of the first page are worked out while the server starts; what can't be read is told by the page itself.
        _ = Task.Run(app.Services.GetRequiredService<DesignGallery>().Entries, stop);
        await app.StartAsync(stop);
        string[] addresses = [.. app.Urls];
        string? code = null;
        if (options.Sharing is { } sharing)
        {
            sharing.Port = new Uri(addresses[^1]).Port;
            code = app.Services.GetRequiredService<Devices>().NewCode();
        }

        started(
            addresses[0].Replace("127.0.0.1", "localhost", StringComparison.Ordinal) + "/",
            code
        );
        await app.WaitForShutdownAsync(stop);
    }

    /// <summary>Builds the server; the caller starts it.</summary>
    /// <exception cref="IOException">The folder can't be made.</exception>
    public static WebApplication Build(ServeOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        DesignFolder folder = new(options.Folder);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions
            {
                ContentRootPath = AppContext.BaseDirectory,
                EnvironmentName = "Production",
            }
        );
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 2 * DesignUpload.MostBytes;
            kestrel.Listen(IPAddress.Loopback, options.Port);
            if (options.Sharing is { } sharing)
            {
                kestrel.Listen(
                    sharing.Listen,
                    options.Port == 0 ? 0 : options.Port + 1,
                    Guests.MarkAll
                );
            }
        });
        // What goes wrong in the server is told where it was started, and nothing else.
        builder
            .Logging.ClearProviders()
            .SetMinimumLevel(LogLevel.Error)
            // A tablet that still has the cookie of an earlier start gets a new one: no fault.
            .AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None)
            .AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Error);
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddAntiforgery();
        builder.Services.AddSingleton(folder);
        builder.Services.AddSingleton(options);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<Devices>();
        builder.Services.AddSingleton<Behind>();
        builder.Services.AddSingleton<DesignSessions>();
        builder.Services.AddSingleton<DesignGallery>();
        builder
            .Services.AddRazorComponents()
            .AddInteractiveServerComponents(circuit =>
            {
                circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(2);
                circuit.JSInteropDefaultCallTimeout = TimeSpan.FromSeconds(20);
            })
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = MostMessageBytes);
        WebApplication app = builder.Build();
        app.Use(Guarding.Check);
        app.Use(Preferences.Follow);
        Devices devices = app.Services.GetRequiredService<Devices>();
        app.Use((context, next) => Guests.Check(context, next, devices));
        app.UseStatusCodePagesWithReExecute("/missing");
        app.UseAntiforgery();
        app.MapStaticAssets();
        PageAssets.Map(app);
        Preferences.Map(app);
        Downloads.Map(app);
        if (options.Sharing is not null)
        {
            Joining.Map(app);
        }

        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }
}
