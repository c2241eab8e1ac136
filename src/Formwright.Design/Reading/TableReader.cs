using System.Globalization;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>
/// Reads one table of a design file, key by key. Every read states what the key takes, so that the same calls give the values,
/// the diagnostics, and (on an empty file) the list of all keys. A faulty key is reported once and read as its default or NaN,
/// so that all faults of a file come out at once.
/// </summary>
public sealed partial class TableReader
{
    private const int MostInList = 64;
    private const int MostTables = 200;
    private const int MostCharacters = 200;

    /// <summary>A length in mm. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public double Length(string key, double? whenAbsent, double min, double max)
    {
        Declare(key, KeyKind.Length, "mm", Number(whenAbsent), min, max);
        return Kept(
            key,
            ReadNumber(key, KeyKind.Length, "mm", min, max) ?? Absent(key, whenAbsent)
        );
    }

    /// <summary>A length in mm, or null where the key is absent.</summary>
    public double? OptionalLength(string key, double min, double max)
    {
        Declare(key, KeyKind.Length, "mm", "", min, max);
        return Kept(key, ReadNumber(key, KeyKind.Length, "mm", min, max));
    }

    /// <summary>A plain number in <paramref name="unit"/>. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public double Number(string key, double? whenAbsent, double min, double max, string unit)
    {
        Declare(key, KeyKind.Number, unit, Number(whenAbsent), min, max);
        return Kept(
            key,
            ReadNumber(key, KeyKind.Number, unit, min, max) ?? Absent(key, whenAbsent)
        );
    }

    /// <summary>A plain number in <paramref name="unit"/>, or null where the key is absent.</summary>
    public double? OptionalNumber(string key, double min, double max, string unit)
    {
        Declare(key, KeyKind.Number, unit, "", min, max);
        return Kept(key, ReadNumber(key, KeyKind.Number, unit, min, max));
    }

    /// <summary>A whole number. Null for <paramref name="whenAbsent"/>: the key must be given.</summary>
    public int Whole(string key, int? whenAbsent, int min, int max)
    {
        Declare(key, KeyKind.Whole, "", Number(whenAbsent), min, max);
        double value = ReadNumber(key, KeyKind.Whole, "", min, max) ?? Absent(key, whenAbsent);
        return Kept(key, double.IsFinite(value) ? (int)value : min);
    }

    /// <summary>Lengths in mm, in the order of the file; at most 64. An empty list is refused unless it is the default.</summary>
    public IReadOnlyList<double> Lengths(
        string key,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max
    ) => Kept(key, ReadList(key, KeyKind.Lengths, "mm", whenAbsent, min, max));

    /// <summary>Plain numbers in <paramref name="unit"/>, in the order of the file; at most 64. An empty list is refused unless it is the default.</summary>
    public IReadOnlyList<double> Numbers(
        string key,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max,
        string unit
    ) => Kept(key, ReadList(key, KeyKind.Numbers, unit, whenAbsent, min, max));

    /// <summary>Free text of one line and at most 200 characters.</summary>
    public string Text(string key, string whenAbsent)
    {
        Declare(key, KeyKind.Text, "", $"\"{whenAbsent}\"", 0, MostCharacters);
        Kept(key, whenAbsent);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        if (value is not StringValueSyntax { Value: { } text })
        {
            Report(value.Span, key, "diagnostic.text", Told(key));
        }
        else if (text.Length > MostCharacters || text.Any(char.IsControl))
        {
            Report(value.Span, key, "diagnostic.text-length", Told(key), MostCharacters);
        }
        else
        {
            return Kept(key, text);
        }

        return whenAbsent;
    }

    /// <summary>true or false.</summary>
    public bool Flag(string key, bool whenAbsent)
    {
        Declare(key, KeyKind.Flag, "", whenAbsent ? "true" : "false", 0, 1);
        Kept(key, whenAbsent);
        ValueSyntax? value = ValueOf(key);
        if (value is BooleanValueSyntax flag)
        {
            return Kept(key, flag.Value);
        }

        if (value is not null)
        {
            Report(value.Span, key, "diagnostic.flag", Told(key));
        }

        return whenAbsent;
    }

    /// <summary>One of the names of an enum, written in small letters with hyphens (<c>CorkOverlay</c> is <c>"cork-overlay"</c>).</summary>
    public T Choice<T>(string key, T whenAbsent)
        where T : struct, Enum
    {
        T[] values = Enum.GetValues<T>();
        string[] names = [.. values.Select(value => Choices.NameOf(value))];
        return values[Array.IndexOf(names, Word(key, Choices.NameOf(whenAbsent), names))];
    }

    /// <summary>One of some words; large and small letters are the same.</summary>
    /// <param name="key">The key.</param>
    /// <param name="whenAbsent">One of <paramref name="names"/>.</param>
    /// <param name="names">The words as they are written.</param>
    public string Word(string key, string whenAbsent, IReadOnlyList<string> names)
    {
        Declare(key, KeyKind.Choice, "", $"\"{whenAbsent}\"", 0, 0, names);
        Kept(key, whenAbsent);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        string? given = (value as StringValueSyntax)?.Value;
        if (
            names.FirstOrDefault(name => name.Equals(given, StringComparison.OrdinalIgnoreCase)) is
            { } found
        )
        {
            return Kept(key, found);
        }

        string dotted = Told(key);
        if (given is not null && Nearest.To(given, names) is { } near)
        {
            Report(value.Span, key, "diagnostic.choice-near", dotted, Quoted(names), near);
        }
        else
        {
            Report(value.Span, key, "diagnostic.choice", dotted, Quoted(names));
        }

        return whenAbsent;
    }

    /// <summary>A table within this one; absent, it reads as empty.</summary>
    public TableReader Table(string key)
    {
        known.Add(key);
        TomlTable inner = new(table.Span, TableOrigin.Passing);
        State found = state == State.Faulty ? State.Faulty : State.Absent;
        if (table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            context.Places[Join(path, key)] = entry.Span;
            if (entry.Table is not null)
            {
                (inner, found) = (entry.Table, State.Present);
            }
            else
            {
                found = State.Faulty;
                Report(entry.Span, key, "diagnostic.table", key, Told(key));
            }
        }

        return Child(inner, key, Join(path, key), Join(specPath, key), found);
    }

    /// <summary>A list of tables (<c>[[key]]</c>), at most 200; absent, it is empty.</summary>
    public IReadOnlyList<TableReader> Tables(string key)
    {
        known.Add(key);
        string spec = Join(specPath, key) + "[]";
        if (context.Specs is not null)
        {
            TomlTable empty = new(default, TableOrigin.Passing);
            return [Child(empty, key, Join(path, key), spec, State.Absent)];
        }

        if (!table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            return [];
        }

        context.Places[Join(path, key)] = entry.Span;
        if (entry.Value is ArraySyntax { Items.ChildrenCount: 0 })
        {
            return [];
        }

        if (entry.Tables is null || entry.Tables.Count > MostTables)
        {
            Report(entry.Span, key, "diagnostic.tables", key, Told(key), MostTables);
            return [];
        }

        List<TableReader> readers = [];
        foreach (TomlTable each in entry.Tables)
        {
            string name = $"{key}[{readers.Count}]";
            context.Places[Join(path, name)] = each.Span;
            readers.Add(Child(each, name, Join(path, name), spec, State.Present));
        }

        return readers;
    }

    /// <summary>Reports a fault that several keys share, at one of them. Values that were faulty themselves are NaN: compare so that NaN passes.</summary>
    /// <param name="key">A key of this table.</param>
    /// <param name="message">What is wrong, in the reader's language.</param>
    public void Fault(string key, string message)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(message);
        SourceSpan at = table.Entries.TryGetValue(key, out TomlEntry? entry)
            ? entry.Span
            : table.Span;
        context.Report(at, Join(path, key), message);
    }

    /// <summary>Reports two keys that stand the wrong way round. A value that was faulty itself (NaN) passes.</summary>
    /// <param name="smaller">The key that must not be the larger.</param>
    /// <param name="smallerValue">Its value.</param>
    /// <param name="larger">The other key.</param>
    /// <param name="largerValue">Its value.</param>
    public void InOrder(string smaller, double smallerValue, string larger, double largerValue)
    {
        if (smallerValue > largerValue)
        {
            string at = Has(smaller) ? smaller : larger;
            Fault(
                at,
                Words.Format(
                    "diagnostic.order",
                    Told(smaller),
                    smallerValue,
                    Told(larger),
                    largerValue
                )
            );
        }
    }

    private static string Quoted(IEnumerable<string> names) =>
        string.Join(", ", names.Select(name => $"\"{name}\""));

    private static string? Number(double? value) => value?.ToString(CultureInfo.InvariantCulture);
}
