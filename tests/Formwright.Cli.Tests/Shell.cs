using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Formwright.Cli.Tests;

/// <summary>Runs the program as a maker does: as a process of its own, in a folder of its own.</summary>
public sealed partial class Shell : IDisposable
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
        return new Outcome(process.ExitCode, output, Progress().Replace(error.Result, ""));
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

    /// <summary>The same within this process: quicker, where it is only about words.</summary>
    public static Outcome Here(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        int status = CommandLine.Run(args, new Streams(output, error, false));
        return new Outcome(status, output.ToString(), Progress().Replace(error.ToString(), ""));
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    // On a busy machine anything may take longer than a second and be told.
    [GeneratedRegex(
        "^(?:Computing …|Calculando …|Writing the pack …|Escribiendo el paquete …|\\d+ (?:of|de) \\d+: .*)\n",
        RegexOptions.Multiline
    )]
    private static partial Regex Progress();
}
