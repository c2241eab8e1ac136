using Formwright.Words;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <content>Which keys the table has, which are known, and which are missing.</content>
public sealed partial class TableReader
{
    private static readonly Wording Words = DesignWords.Of;
    private readonly ReadingContext context;
    private readonly TomlTable table;
    private readonly string name;
    private readonly string path;
    private readonly string specPath;
    private readonly State state;
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly List<string> missing = [];
    private readonly List<TableReader> children = [];

    private enum State
    {
        Present,
        Absent,
        Faulty,
    }

    private TableReader(
        ReadingContext context,
        TomlTable table,
        (string Name, string Path, string Spec) names,
        State state
    )
    {
        this.context = context;
        this.table = table;
        (name, path, specPath) = names;
        this.state = state;
    }

    /// <summary>Whether the file has this table at all.</summary>
    public bool IsPresent => state != State.Absent;

    /// <summary>Whether the file gives the key.</summary>
    public bool Has(string key) => table.Entries.ContainsKey(key);

    /// <summary>The keys that the file gives.</summary>
    internal IEnumerable<string> Given => table.Entries.Keys;

    /// <summary>The root of a text that comes with the tool; its faults go to <paramref name="diagnostics"/>.</summary>
    internal static TableReader Of(string text, string file, List<Diagnostic> diagnostics)
    {
        TomlTable tree = new SyntaxReader(file, diagnostics).Read(text) is { } document
            ? new TomlTreeBuilder(file, diagnostics).Build(document)
            : new TomlTable(default, TableOrigin.Passing);
        return Root(new ReadingContext(file, diagnostics), tree);
    }

    internal static TableReader Root(ReadingContext context, TomlTable table) =>
        new(context, table, ("", "", ""), State.Present);

    /// <summary>
    /// After all keys were asked for: reports every key that nobody asked for, with the nearest that exists, and every key that must be
    /// given and isn't; here and below. A table that is missing as a whole is one fault, and so is a mistyped key that must be given.
    /// </summary>
    internal void ReportUnknownAndMissing()
    {
        HashSet<string> meant = new(StringComparer.Ordinal);
        foreach ((string key, TomlEntry entry) in table.Entries)
        {
            if (!known.Contains(key) && !context.IsFull)
            {
                ReportUnknown(key, entry, meant);
            }
        }

        if (!context.MissingMatters)
        {
            missing.Clear();
        }

        foreach (string key in missing.Where(key => !meant.Contains(key)))
        {
            Report(table.Span, key, "diagnostic.missing", Told(key));
        }

        foreach (TableReader child in children)
        {
            if (child.state == State.Present)
            {
                child.ReportUnknownAndMissing();
            }
            else if (child.state == State.Absent && !meant.Contains(child.name))
            {
                List<string> needed = [.. child.Needed("")];
                if (needed.Count > 0 && context.MissingMatters)
                {
                    string keys = string.Join(", ", needed);
                    Report(table.Span, child.name, "diagnostic.missing-table", child.path, keys);
                }
            }
        }
    }

    private void ReportUnknown(string key, TomlEntry entry, HashSet<string> meant)
    {
        string shown = Shown.Of(Told(key));
        IEnumerable<string> free = known.Where(other => !table.Entries.ContainsKey(other));
        if ((Nearest.To(key, free) ?? Nearest.To(key, known)) is { } near)
        {
            meant.Add(near);
            Report(entry.Span, key, "diagnostic.unknown-near", shown, near);
            return;
        }

        string[] elsewhere = [.. DesignText.KeysNamed(key).Take(3)];
        if (elsewhere.Length > 0)
        {
            string places = string.Join(", ", elsewhere);
            Report(entry.Span, key, "diagnostic.unknown-elsewhere", shown, places);
            return;
        }

        string all = string.Join(", ", known.Order(StringComparer.Ordinal));
        Report(entry.Span, key, "diagnostic.unknown", shown, all);
    }

    private IEnumerable<string> Needed(string prefix) =>
        missing
            .Select(key => prefix + key)
            .Concat(children.SelectMany(child => child.Needed($"{prefix}{child.name}.")));

    private TableReader Child(
        TomlTable inner,
        string childName,
        string childPath,
        string childSpec,
        State found
    )
    {
        TableReader child = new(context, inner, (childName, childPath, childSpec), found);
        children.Add(child);
        return child;
    }

    private double Absent(string key, double? whenAbsent)
    {
        if (whenAbsent is null && context.Specs is null)
        {
            missing.Add(key);
        }

        return whenAbsent ?? double.NaN;
    }

    private void Declare(
        string key,
        KeyKind kind,
        string unit,
        string? standard,
        double min,
        double max,
        IReadOnlyList<string>? choices = null
    )
    {
        known.Add(key);
        context.Specs?.Add(
            new KeySpec(Join(specPath, key), kind, unit, standard, min, max, choices ?? [])
        );
    }

    private void Report(SourceSpan at, string key, string message, params object?[] values) =>
        context.Report(at, Join(path, key), Words.Format(message, values));

    // A key as messages name it; which entry of a list it is in, the line tells better than an index.
    private string Told(string key) => KeySpec.WithoutMarks(Join(specPath, key));

    private static string Join(string path, string key) => KeyPart.Join(path, key);
}
