using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Formwright.Testing;

namespace Formwright.Web.Browser.Tests;

/// <summary>A server as a process of its own, on a free port, with a folder of its own; and pages that look at it.</summary>
public sealed class Workshop : IAsyncDisposable
{
    private readonly int port = FreePort();
    private readonly List<Task<string>> faults = [];
    private Process? process;

    public Workshop(params string[] models)
    {
        Folder = Path.Combine(Path.GetTempPath(), $"formwright-page-{Guid.NewGuid():N}");
        Directory.CreateDirectory(Folder);
        foreach (string model in models)
        {
            Add(model, model);
        }
    }

    public string Folder { get; }

    public int Port => port;

    public string Address => $"http://localhost:{port}";

    public string PathOf(string design) => Path.Combine(Folder, design + ".toml");

    /// <summary>Copies a model into the folder.</summary>
    public string Add(string model, string name)
    {
        File.Copy(Repository.PathOf("examples", model + ".toml"), PathOf(name));
        return name;
    }

    /// <summary>Starts the server and waits until it answers.</summary>
    /// <param name="more">More words of the command.</param>
    public async Task StartAsync(params string[] more)
    {
        string program = Repository.PathOf(
            "src",
            "Formwright.Cli",
            "bin",
            Configuration,
            "net10.0",
            "formwright"
        );
        process = Process.Start(
            new ProcessStartInfo(
                program,
                ["serve", Folder, "--port", $"{port}", "--no-browser", .. more]
            )
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        faults.Add(process.StandardError.ReadToEndAsync());
        string? line = await process
            .StandardOutput.ReadLineAsync()
            .WaitAsync(TimeSpan.FromSeconds(60));
        _ = process.StandardOutput.ReadToEndAsync();
        Assert.NotNull(line);
    }

    /// <summary>Ends the server as a fall of the mains would.</summary>
    public void Kill()
    {
        process?.Kill();
        process?.WaitForExit();
        process = null;
    }

    /// <summary>Waits until the file says something.</summary>
    public async Task FileSaysAsync(string design, string text)
    {
        for (int i = 0; i < 300; i++)
        {
            if (File.ReadAllText(PathOf(design)).Contains(text, StringComparison.Ordinal))
            {
                return;
            }

            await Task.Delay(50);
        }

        Assert.Contains(text, File.ReadAllText(PathOf(design)));
    }

    /// <summary>Ends the server and makes sure that it had nothing to complain of.</summary>
    public async ValueTask DisposeAsync()
    {
        Kill();
        Directory.Delete(Folder, recursive: true);
        foreach (Task<string> told in faults)
        {
            Assert.Empty(await told);
        }
    }

#if DEBUG
    private const string Configuration = "Debug";
#else
    private const string Configuration = "Release";
#endif

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
