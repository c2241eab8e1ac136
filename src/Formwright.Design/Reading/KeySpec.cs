namespace Formwright.Design.Reading;

/// <summary>What one key of the design file takes; page, reference and diagnostics share it.</summary>
/// <param name="Path">Dotted key, <c>[]</c> after a list of tables: <c>harmonic_bars[].at</c>.</param>
/// <param name="Kind">What its value is.</param>
/// <param name="Unit">Unit of a bare number: <c>mm</c>, <c>°</c>, <c>GPa</c> …, or empty.</param>
/// <param name="Default">The value when the key is absent, as it would stand in the file; null where it must be given; empty where absent means 'none'.</param>
/// <param name="Min">Smallest value taken.</param>
/// <param name="Max">Largest value taken.</param>
/// <param name="Choices">The words taken, for a choice.</param>
public sealed record KeySpec(
    string Path,
    KeyKind Kind,
    string Unit,
    string? Default,
    double Min,
    double Max,
    IReadOnlyList<string> Choices
)
{
    /// <summary>Path of the group that holds the key, as <see cref="Path"/> writes it; empty at the root.</summary>
    public string Group => Path[..Math.Max(0, Path.LastIndexOf('.'))];

    /// <summary>The key within its group.</summary>
    public string Name => Path[(Path.LastIndexOf('.') + 1)..];

    /// <summary>Key of its explanation in the resources: the path without list marks.</summary>
    public string DocKey => "key." + WithoutMarks(Path);

    /// <summary>Key of its group's explanation in the resources.</summary>
    public string GroupDocKey => "group." + WithoutMarks(Group);

    /// <summary>What the key is and how to measure it, in the reader's language.</summary>
    public string Text => DesignWords.Of[DocKey];

    /// <summary>What the key's group is, in the reader's language.</summary>
    public string GroupText => DesignWords.Of[GroupDocKey];

    internal static string WithoutMarks(string path) =>
        path.Replace("[]", "", StringComparison.Ordinal);
}
