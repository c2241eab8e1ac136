using System.Reflection;

namespace Formwright.Design;

/// <summary>The invented models that come with the tool, as design files.</summary>
public static class DesignModels
{
    private const string Folder = "Models/";
    private const string Ending = ".toml";

    /// <summary>Names of the models, in order: dunlin, heron, plover.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. Here.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    private static Assembly Here => typeof(DesignModels).Assembly;

    /// <summary>The file of a model as it stands in the examples.</summary>
    /// <exception cref="ArgumentException">There is no such model.</exception>
    public static string TextOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        using Stream? stream = Here.GetManifestResourceStream(Folder + name + Ending);
        if (stream is null)
        {
            throw new ArgumentException($"No model '{name}'.", nameof(name));
        }

        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
