using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Formwright.PageBench;

/// <summary>The server that a maker runs, as ./formwright built it, in a process and a folder of its own.</summary>
internal sealed class Served : IDisposable
{
    private readonly string folder = Path.Combine(
        Path.GetTempPath(),
        $"formwright-bench-{Guid.NewGuid():N}"
    );
    private Process? process;

    public Served() => Directory.CreateDirectory(folder);

    public string Address { get; private set; } = "";

    public long MemoryMb
    {
        get
        {
            process!.Refresh();
            return process.WorkingSet64 / 1024 / 1024;
        }
    }

    public TimeSpan Cpu
    {
        get
        {
            process!.Refresh();
            return process.TotalProcessorTime;
        }
    }

    /// <summary>So many designs, each with a lower bout of its own.</summary>
    public void Fill(int designs)
    {
        string text = File.ReadAllText(Path.Combine(Root(), "examples", "heron.toml"));
        for (int i = 0; i < designs; i++)
        {
            File.WriteAllText(
                Path.Combine(folder, $"heron {i + 1}.toml"),
                text.Replace("width = 368", $"width = {348 + (i % 40)}", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Starts the server.</summary>
    /// <returns>How long it took until it told its address.</returns>
    public async Task<TimeSpan> StartAsync()
    {
        Stopwatch watch = Stopwatch.StartNew();
        string program = Path.Combine(Root(), ".build", "formwright", "formwright");
        process = Process.Start(
            new ProcessStartInfo(program, ["serve", folder, "--port", "0", "--no-browser"])
            {
                RedirectStandardOutput = true,
            }
        )!;
        string line = (await process.StandardOutput.ReadLineAsync())!;
        Address = line.Split(' ').First(word => word.StartsWith("http", StringComparison.Ordinal));
        Address = Address.TrimEnd('.', '/');
        return watch.Elapsed;
    }

    public void Dispose()
    {
        process?.Kill();
        process?.WaitForExit();
        process?.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private static string Root([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
