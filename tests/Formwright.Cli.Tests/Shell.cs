using System.Diagnostics;

namespace Formwright.Cli.Tests;

/// <summary>Runs the program as a maker does: as a process of its own, in a folder of its own.</summary>
public sealed class Shell : IDisposable
{
    private static readonly string Program = Path.Combine(
        AppContext.BaseDirectory,
        "formwright.dll"
    );

    /// <summary>The folder that commands run in.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("formwright-cli").FullName;

    public string PathOf(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return name;
    }

    /// <summary>Files and folders that are there now, hidden ones too.</summary>
    public string[] Names() =>
        [
            .. Directory
                .EnumerateFileSystemEntries(Folder)
                .Select(path => Path.GetFileName(path)!)
                .Order(StringComparer.Ordinal),
        ];

    public Outcome Run(params string[] args)
    {
        using Process process = Start(args);
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Outcome(process.ExitCode, output, error.Result);
    }

    public Process Start(params string[] args)
    {
        ProcessStartInfo start = new("dotnet", [Program, .. args])
        {
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["LANG"] = "C.UTF-8";
        start.Environment.Remove("LC_ALL");
        start.Environment.Remove("LC_MESSAGES");
        return Process.Start(start)!;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
