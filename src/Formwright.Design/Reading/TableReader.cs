using System.Globalization;
using Formwright.Words;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>
/// Reads one table of a design file, key by key. Every read states what the key takes, so that the same calls give the values,
/// the diagnostics, and (on an empty file) the list of all keys. A faulty key is reported once and read as its default,
/// so that all faults of a file come out at once.
/// </summary>
public sealed class TableReader
{
    private static readonly Wording Words = DesignWords.Of;
    private readonly ReadingContext context;
    private readonly TomlTable table;
    private readonly string path;
    private readonly string specPath;
    private readonly bool present;
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly List<TableReader> children = [];

    internal TableReader(
        ReadingContext context,
        TomlTable table,
        string path,
        string specPath,
        bool present
    )
    {
        this.context = context;
        this.table = table;
        this.path = path;
        this.specPath = specPath;
        this.present = present;
    }

    /// <summary>Whether the file has this table at all.</summary>
    public bool IsPresent => present;

    /// <summary>Whether the file gives the key.</summary>
    public bool Has(string key) => table.Entries.ContainsKey(key);

    /// <summary>A length in mm. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public double Length(string key, double? whenAbsent, double min, double max)
    {
        Declare(key, KeyKind.Length, "mm", Number(whenAbsent), min, max);
        return ReadNumber(key, KeyKind.Length, "mm", min, max) ?? Absent(key, whenAbsent);
    }

    /// <summary>A length in mm, or null where the key is absent.</summary>
    public double? OptionalLength(string key, double min, double max)
    {
        Declare(key, KeyKind.Length, "mm", "", min, max);
        return ReadNumber(key, KeyKind.Length, "mm", min, max);
    }

    /// <summary>A plain number in <paramref name="unit"/>. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public double Number(string key, double? whenAbsent, double min, double max, string unit)
    {
        Declare(key, KeyKind.Number, unit, Number(whenAbsent), min, max);
        return ReadNumber(key, KeyKind.Number, unit, min, max) ?? Absent(key, whenAbsent);
    }

    /// <summary>A plain number in <paramref name="unit"/>, or null where the key is absent.</summary>
    public double? OptionalNumber(string key, double min, double max, string unit)
    {
        Declare(key, KeyKind.Number, unit, "", min, max);
        return ReadNumber(key, KeyKind.Number, unit, min, max);
    }

    /// <summary>A whole number. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public int Whole(string key, int? whenAbsent, int min, int max)
    {
        Declare(key, KeyKind.Whole, "", Number(whenAbsent), min, max);
        double value = ReadNumber(key, KeyKind.Whole, "", min, max) ?? Absent(key, whenAbsent);
        return double.IsFinite(value) ? (int)value : min;
    }

    /// <summary>Lengths in mm, in the order of the file; at most 64.</summary>
    public IReadOnlyList<double> Lengths(
        string key,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max
    ) => ReadList(key, KeyKind.Lengths, "mm", whenAbsent, min, max);

    /// <summary>Plain numbers in <paramref name="unit"/>, in the order of the file; at most 64.</summary>
    public IReadOnlyList<double> Numbers(
        string key,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max,
        string unit
    ) => ReadList(key, KeyKind.Numbers, unit, whenAbsent, min, max);

    /// <summary>Free text of at most 200 characters.</summary>
    public string Text(string key, string whenAbsent)
    {
        Declare(key, KeyKind.Text, "", $"\"{whenAbsent}\"", 0, 200);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        if (value is StringValueSyntax { Value: { } text })
        {
            if (text.Length <= 200 && !text.Any(char.IsControl))
            {
                return text;
            }

            Report(value.Span, key, Words.Format("diagnostic.text-length", key, 200));
            return whenAbsent;
        }

        Report(value.Span, key, Words.Format("diagnostic.text", key));
        return whenAbsent;
    }

    /// <summary>true or false.</summary>
    public bool Flag(string key, bool whenAbsent)
    {
        Declare(key, KeyKind.Flag, "", whenAbsent ? "true" : "false", 0, 1);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        if (value is BooleanValueSyntax flag)
        {
            return flag.Value;
        }

        Report(value.Span, key, Words.Format("diagnostic.flag", key));
        return whenAbsent;
    }

    /// <summary>One of the names of an enum, written in small letters with hyphens (<c>CorkOverlay</c> is <c>"cork-overlay"</c>).</summary>
    public T Choice<T>(string key, T whenAbsent)
        where T : struct, Enum
    {
        T[] values = Enum.GetValues<T>();
        string[] names = [.. values.Select(value => Choices.NameOf(value))];
        Declare(key, KeyKind.Choice, "", $"\"{Choices.NameOf(whenAbsent)}\"", 0, 0, names);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        string given = value is StringValueSyntax { Value: { } text }
            ? text
            : value.ToString() ?? "";
        int index = Array.IndexOf(names, given);
        if (value is StringValueSyntax && index >= 0)
        {
            return values[index];
        }

        string nearest = Nearest.To(given, names) is { } near
            ? " " + Words.Format("diagnostic.nearest", near)
            : "";
        Report(value.Span, key, Words.Format("diagnostic.choice", key, Quoted(names)) + nearest);
        return whenAbsent;
    }

    /// <summary>A table within this one; absent, it reads as empty.</summary>
    public TableReader Table(string key)
    {
        known.Add(key);
        TomlTable inner = new(table.Span);
        bool found = false;
        if (table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            if (entry.Table is not null)
            {
                (inner, found) = (entry.Table, true);
            }
            else
            {
                Report(entry.Span, key, Words.Format("diagnostic.table", key));
            }
        }

        return Child(inner, Join(path, key), Join(specPath, key), found);
    }

    /// <summary>A list of tables (<c>[[key]]</c>), at most 200; absent, it is empty.</summary>
    public IReadOnlyList<TableReader> Tables(string key)
    {
        known.Add(key);
        string spec = Join(specPath, key) + "[]";
        if (context.Specs is not null)
        {
            return [Child(new TomlTable(default), Join(path, key), spec, false)];
        }

        if (!table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            return [];
        }

        if (entry.Tables is null || entry.Tables.Count > 200)
        {
            Report(entry.Span, key, Words.Format("diagnostic.tables", key));
            return [];
        }

        return
        [
            .. entry.Tables.Select((each, i) => Child(each, $"{Join(path, key)}[{i}]", spec, true)),
        ];
    }

    /// <summary>Reports a fault that several keys share, at one of them.</summary>
    public void Fault(string key, string message)
    {
        SourceSpan at = table.Entries.TryGetValue(key, out TomlEntry? entry)
            ? entry.Span
            : table.Span;
        Report(at, key, message);
    }

    /// <summary>Reports every key that was in the file but that nobody asked for, here and below, with the nearest that exists.</summary>
    internal void ReportUnknownKeys()
    {
        foreach ((string key, TomlEntry entry) in table.Entries)
        {
            if (!known.Contains(key))
            {
                string message = Nearest.To(key, known) is { } near
                    ? Words.Format("diagnostic.unknown-near", Join(path, key), near)
                    : Words.Format(
                        "diagnostic.unknown",
                        Join(path, key),
                        string.Join(", ", known.Order())
                    );
                Report(entry.Span, key, message);
            }
        }

        foreach (TableReader child in children)
        {
            child.ReportUnknownKeys();
        }
    }

    private TableReader Child(TomlTable inner, string childPath, string childSpec, bool found)
    {
        TableReader child = new(context, inner, childPath, childSpec, found);
        children.Add(child);
        return child;
    }

    private IReadOnlyList<double> ReadList(
        string key,
        KeyKind kind,
        string unit,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max
    )
    {
        string standard = $"[{string.Join(", ", whenAbsent.Select(value => Number(value)))}]";
        Declare(key, kind, unit, standard, min, max);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        if (value is not ArraySyntax array || array.Items.ChildrenCount > 64)
        {
            Report(value.Span, key, Words.Format("diagnostic.list", key));
            return whenAbsent;
        }

        KeyKind each = kind == KeyKind.Lengths ? KeyKind.Length : KeyKind.Number;
        return
        [
            .. array
                .Items.Where(item => item.Value is not null)
                .Select(item => NumberOf(item.Value!, key, each, unit, min, max) ?? double.NaN),
        ];
    }

    private double? ReadNumber(string key, KeyKind kind, string unit, double min, double max)
    {
        ValueSyntax? value = ValueOf(key);
        return value is null ? null : NumberOf(value, key, kind, unit, min, max) ?? double.NaN;
    }

    private double? NumberOf(
        ValueSyntax syntax,
        string key,
        KeyKind kind,
        string unit,
        double min,
        double max
    )
    {
        double number;
        switch (syntax)
        {
            case IntegerValueSyntax whole:
                number = whole.Value;
                break;
            case FloatValueSyntax real when kind != KeyKind.Whole:
                number = real.Value;
                break;
            case StringValueSyntax { Value: { } text } when kind == KeyKind.Length:
                LengthFault fault = Design.Lengths.Read(text, out number);
                if (fault != LengthFault.None)
                {
                    string message =
                        fault == LengthFault.UnknownUnit
                            ? "diagnostic.unit"
                            : "diagnostic.length-text";
                    Report(
                        syntax.Span,
                        key,
                        Words.Format(message, key, text, Design.Lengths.KnownUnits)
                    );
                    return null;
                }

                break;
            default:
                string wanted =
                    kind == KeyKind.Length ? "diagnostic.length"
                    : kind == KeyKind.Whole ? "diagnostic.whole"
                    : "diagnostic.number";
                Report(syntax.Span, key, Words.Format(wanted, key, unit));
                return null;
        }

        if (double.IsFinite(number) && number >= min && number <= max)
        {
            return number;
        }

        Report(
            syntax.Span,
            key,
            Words.Format("diagnostic.range", key, number, min, max, unit).TrimEnd()
        );
        return null;
    }

    private double Absent(string key, double? whenAbsent)
    {
        if (whenAbsent is { } value)
        {
            return value;
        }

        if (context.Specs is null)
        {
            Report(table.Span, key, Words.Format("diagnostic.missing", Join(path, key)));
        }

        return double.NaN;
    }

    private ValueSyntax? ValueOf(string key)
    {
        if (!table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            return null;
        }

        context.Places[Join(path, key)] = entry.Span;
        if (entry.Value is null)
        {
            Report(entry.Span, key, Words.Format("diagnostic.value", key));
        }

        return entry.Value;
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

    private void Report(SourceSpan at, string key, string message) =>
        context.Diagnostics.Add(
            new Diagnostic(
                context.File,
                at.Start.Line + 1,
                at.Start.Column + 1,
                Join(path, key),
                message
            )
        );

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static string Quoted(IEnumerable<string> names) =>
        string.Join(", ", names.Select(name => $"\"{name}\""));

    private static string? Number(double? value) => value?.ToString(CultureInfo.InvariantCulture);
}
