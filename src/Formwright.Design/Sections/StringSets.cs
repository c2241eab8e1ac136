using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>The built-in string sets: invented figures in the usual range of nylon-string instruments, read from <c>string-sets.toml</c>.</summary>
public static class StringSets
{
    private static readonly Lazy<IReadOnlyDictionary<string, IReadOnlyList<StringDesign>>> All =
        new(Load);

    /// <summary>Names of the sets, in order.</summary>
    public static IReadOnlyList<string> Names => [.. All.Value.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Strings of a set from bass to treble, or null where there is no set of that name.</summary>
    public static IReadOnlyList<StringDesign>? Find(string name) =>
        All.Value.GetValueOrDefault(name);

    private static Dictionary<string, IReadOnlyList<StringDesign>> Load()
    {
        using Stream stream = typeof(StringSets).Assembly.GetManifestResourceStream(
            "Data/string-sets.toml"
        )!;
        using StreamReader reader = new(stream);
        List<Diagnostic> diagnostics = [];
        TableReader root = TableReader.Of(reader.ReadToEnd(), "string-sets.toml", diagnostics);
        Dictionary<string, IReadOnlyList<StringDesign>> sets = new(StringComparer.Ordinal);
        foreach (string name in root.Given)
        {
            sets[name] = [.. root.Tables(name).Select(StringDesign.Read)];
        }

        root.ReportUnknownAndMissing();
        return diagnostics.Count == 0
            ? sets
            : throw new InvalidDataException(string.Join(Environment.NewLine, diagnostics));
    }
}
