using Formwright.Design.Reading;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Formwright.Design;

/// <summary>
/// Changes single values in the text of a design and leaves everything else as the maker wrote it: comments, order, spacing.
/// The edit is made in the text, at the span that the parser gives.
/// </summary>
public static class DesignEdit
{
    /// <summary>Sets a key, adding it (and its table) where the text lacks it.</summary>
    /// <param name="text">A design text without syntax errors.</param>
    /// <param name="key">Dotted key; <c>[i]</c> names an entry of a list of tables: <c>harmonic_bars[1].at</c>.</param>
    /// <param name="value">The value as TOML: <c>12.5</c>, <c>"3/4 in"</c>, <c>[18, 18]</c>.</param>
    /// <exception cref="ArgumentException">The text has syntax errors, the value is no TOML value, or the key names an entry that is not there.</exception>
    public static string Set(string text, string key, string value)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(key);
        ArgumentException.ThrowIfNullOrEmpty(value);
        if (Read($"v = {value}").HasErrors)
        {
            throw new ArgumentException("Not a TOML value.", nameof(value));
        }

        DocumentSyntax document = Read(text);
        if (document.HasErrors)
        {
            throw new ArgumentException("The text has syntax errors.", nameof(text));
        }

        string[] path = key.Split('.');
        return Replace(text, document, path, value) ?? Insert(text, document, path, value);
    }

    /// <summary>Removes a key and its line; the text comes back unchanged where it has none. Keys inside <c>{ }</c> lose their pair.</summary>
    /// <exception cref="ArgumentException">The text has syntax errors.</exception>
    public static string Remove(string text, string key)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(key);
        DocumentSyntax document = Read(text);
        if (document.HasErrors)
        {
            throw new ArgumentException("The text has syntax errors.", nameof(text));
        }

        return Find(document, key.Split('.')) is { } pair ? EditSpans.Cut(text, pair) : text;
    }

    private static string? Replace(
        string text,
        DocumentSyntax document,
        string[] path,
        string value
    )
    {
        if (Find(document, path) is not { Value: { } old })
        {
            return null;
        }

        return string.Concat(
            text.AsSpan(0, old.Span.Start.Offset),
            value,
            text.AsSpan(old.Span.End.Offset + 1)
        );
    }

    private static string Insert(string text, DocumentSyntax document, string[] path, string value)
    {
        string newLine = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

        // Longest table that the text has, walking the path up; first an inline table, then a header.
        for (int depth = path.Length - 1; depth >= 1; depth--)
        {
            string[] head = path[..depth];
            string rest = string.Join('.', path[depth..]);
            if (Find(document, head) is { Value: InlineTableSyntax inline })
            {
                return EditSpans.IntoInline(text, inline, $"{rest} = {value}");
            }

            if (Header(document, head) is { } header)
            {
                return EditSpans.IntoTable(text, header, $"{rest} = {value}", newLine);
            }
        }

        if (path.Any(part => part.EndsWith(']')))
        {
            throw new ArgumentException($"No entry for {string.Join('.', path)}.", nameof(path));
        }

        if (path.Length == 1)
        {
            return $"{path[0]} = {value}{newLine}{text}";
        }

        string gap = text.Length == 0 || text.EndsWith('\n') ? "" : newLine;
        return $"{text}{gap}{newLine}[{string.Join('.', path[..^1])}]{newLine}{path[^1]} = {value}{newLine}";
    }

    private static KeyValueSyntax? Find(DocumentSyntax document, string[] path)
    {
        if (In(document.KeyValues, path) is { } top)
        {
            return top;
        }

        for (int depth = path.Length - 1; depth >= 1; depth--)
        {
            if (
                Header(document, path[..depth]) is { } header
                && In(header.Items, path[depth..]) is { } found
            )
            {
                return found;
            }
        }

        return null;
    }

    private static KeyValueSyntax? In(IEnumerable<KeyValueSyntax> items, string[] path)
    {
        foreach (KeyValueSyntax item in items)
        {
            if (item.Key is null)
            {
                continue;
            }

            string[] name = EditSpans.PathOf(item.Key);
            if (
                name.Length > path.Length
                || !name.AsSpan().SequenceEqual(path.AsSpan(0, name.Length))
            )
            {
                continue;
            }

            if (name.Length == path.Length)
            {
                return item;
            }

            if (
                item.Value is InlineTableSyntax inline
                && In(inline.Items.Select(i => i.KeyValue!), path[name.Length..]) is { } inner
            )
            {
                return inner;
            }
        }

        return null;
    }

    private static TableSyntaxBase? Header(DocumentSyntax document, string[] path)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        string wanted = string.Join('.', path);
        string current = "";
        foreach (TableSyntaxBase table in document.Tables)
        {
            if (table.Name is null)
            {
                continue;
            }

            string name = string.Join('.', EditSpans.PathOf(table.Name));
            if (table is TableArraySyntax)
            {
                int index = seen.TryGetValue(name, out int last) ? last + 1 : 0;
                seen[name] = index;
                current = $"{name}[{index}]";
            }
            else
            {
                // A table below an entry of a list belongs to the entry before it.
                string list =
                    current.Length > 0
                        ? current[..current.IndexOf('[', StringComparison.Ordinal)]
                        : "";
                current =
                    list.Length > 0 && name.StartsWith(list + ".", StringComparison.Ordinal)
                        ? current[..(current.IndexOf(']', StringComparison.Ordinal) + 1)]
                            + name[list.Length..]
                        : "";
                name = current.Length > 0 ? current : name;
            }

            if ((table is TableArraySyntax ? current : name) == wanted)
            {
                return table;
            }
        }

        return null;
    }

    private static DocumentSyntax Read(string text)
    {
        try
        {
            return SyntaxParser.Parse(text, "", true);
        }
        catch (ArgumentOutOfRangeException fault)
        {
            // Tomlyn 2.10 on a lone backslash at the end of the file.
            throw new ArgumentException("The text ends inside a string.", nameof(text), fault);
        }
    }
}
