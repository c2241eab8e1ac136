using System.Reflection;
using Formwright.Testing;

namespace Formwright.Architecture.Tests;

/// <summary>The projects under <c>src</c>, their files and their assemblies.</summary>
internal static class Sources
{
    /// <summary>Names of the projects, in order: Cli, Curves, Design …</summary>
    public static IReadOnlyList<string> Projects { get; } =
    [
        .. Directory
            .EnumerateFiles(Repository.PathOf("src"), "*.csproj", SearchOption.AllDirectories)
            .Select(path => Path.GetFileNameWithoutExtension(path)["Formwright.".Length..])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Path of a project's file.</summary>
    public static string ProjectFile(string project) =>
        Repository.PathOf("src", $"Formwright.{project}", $"Formwright.{project}.csproj");

    /// <summary>Sources of a project, without what the build writes.</summary>
    public static IEnumerable<string> Files(string project)
    {
        string folder = Path.GetDirectoryName(ProjectFile(project))!;
        return Directory
            .EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(IsSource);
    }

    /// <summary>All that may ask for a text: code, pages and tables of every project, also of one above.</summary>
    public static string Everything { get; } =
        string.Join(
            '\n',
            new[] { "*.cs", "*.razor", "*.toml", "*.tsv" }
                .SelectMany(pattern =>
                    Directory.EnumerateFiles(
                        Repository.PathOf("src"),
                        pattern,
                        SearchOption.AllDirectories
                    )
                )
                .Where(IsSource)
                .Select(File.ReadAllText)
        );

    /// <summary>A project's assembly, loaded from beside the tests; null for one that the tests don't refer to.</summary>
    public static Assembly? AssemblyOf(string project)
    {
        string name = project == "Cli" ? "formwright" : $"Formwright.{project}";
        string path = Path.Combine(AppContext.BaseDirectory, name + ".dll");
        return File.Exists(path) ? Assembly.LoadFrom(path) : null;
    }

    private static bool IsSource(string path)
    {
        char bar = Path.DirectorySeparatorChar;
        return !path.Contains($"{bar}obj{bar}", StringComparison.Ordinal)
            && !path.Contains($"{bar}bin{bar}", StringComparison.Ordinal)
            && !path.Contains($"{bar}node_modules{bar}", StringComparison.Ordinal);
    }
}
