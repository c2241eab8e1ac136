using System.Diagnostics;

namespace Formwright.Testing;

/// <summary>Runs the independent readers: poppler, librsvg, ezdxf.</summary>
public static class Tools
{
    private static int counter;

    /// <summary>A file name of its own in the tests' output folder.</summary>
    public static string TempFile(string extension)
    {
        string folder = System.IO.Path.Combine(AppContext.BaseDirectory, "out");
        Directory.CreateDirectory(folder);
        return System.IO.Path.Combine(folder, $"t{Interlocked.Increment(ref counter)}{extension}");
    }

    /// <summary>Output of a command; fails with its error text when it fails.</summary>
    public static string Run(string command, params string[] arguments)
    {
        ProcessStartInfo start = new(command, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process =
            Process.Start(start)
            ?? throw new InvalidOperationException($"{command} did not start.");
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? output
            : throw new InvalidOperationException($"{command}: {error.Result}");
    }
}
