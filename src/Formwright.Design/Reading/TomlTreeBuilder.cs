using Formwright.Words;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>
/// Turns a parsed TOML text into tables with places, and reports every key and table that stands twice, by the rules of TOML 1.0:
/// a heading opens a table once; <c>{ }</c> and <c>[ ]</c> are closed for good; a dotted key can't reach into a table that a heading opened.
/// </summary>
internal sealed class TomlTreeBuilder(string file, List<Diagnostic> diagnostics)
{
    private static readonly Wording Words = DesignWords.Of;

    public TomlTable Build(DocumentSyntax document)
    {
        TomlTable root = new(default, TableOrigin.Heading, document);
        AddItems(root, document.KeyValues, "");
        foreach (TableSyntaxBase heading in document.Tables)
        {
            if (heading.Name is not null)
            {
                AddHeading(root, heading);
            }
        }

        return root;
    }

    private void AddHeading(TomlTable root, TableSyntaxBase heading)
    {
        List<KeyPart> path = KeyPart.PathOf(heading.Name!);
        string dotted = KeyPart.Dotted(path);
        TomlTable parent = root;
        for (int i = 0; i < path.Count - 1; i++)
        {
            if (!parent.Entries.TryGetValue(path[i].Name, out TomlEntry? passed))
            {
                TomlTable made = new(heading.Name!.Span, TableOrigin.Passing);
                passed = new TomlEntry(path[i].Span, null, made, null, null);
                parent.Entries[path[i].Name] = passed;
            }

            if (passed.Value is not null || IsClosed(passed))
            {
                ReportTwice(path[i].Span, KeyPart.Dotted(path[..(i + 1)]), passed.Span);
                return;
            }

            parent = passed.Table ?? passed.Tables![^1];
        }

        (string last, SourceSpan span) = path[^1];
        bool isList = heading is TableArraySyntax;
        TomlTable table = new(heading.Name!.Span, TableOrigin.Heading, heading);
        if (!parent.Entries.TryGetValue(last, out TomlEntry? entry))
        {
            parent.Entries[last] = isList
                ? new(span, null, null, [table], null)
                : new(span, null, table, null, null);
        }
        else if (isList && entry.Tables is not null && !IsClosed(entry))
        {
            entry.Tables.Add(table);
        }
        else if (!isList && entry.Table is { Origin: TableOrigin.Passing } passedBefore)
        {
            passedBefore.Open(heading);
            table = passedBefore;
        }
        else
        {
            ReportTwice(heading.Name.Span, dotted, entry.Span);
            return;
        }

        AddItems(table, heading.Items, dotted);
    }

    private void AddItems(TomlTable table, IEnumerable<KeyValueSyntax> items, string prefix)
    {
        foreach (KeyValueSyntax item in items)
        {
            if (item.Key is null || item.Value is null)
            {
                continue;
            }

            List<KeyPart> path = KeyPart.PathOf(item.Key);
            if (ParentOf(table, path, prefix) is not { } parent)
            {
                continue;
            }

            (string name, SourceSpan span) = path[^1];
            string dotted = KeyPart.Join(prefix, KeyPart.Dotted(path));
            if (parent.Entries.TryGetValue(name, out TomlEntry? earlier))
            {
                ReportTwice(span, dotted, earlier.Span);
                continue;
            }

            parent.Entries[name] = EntryOf(item.Value, span, dotted, item);
        }
    }

    private TomlTable? ParentOf(TomlTable table, List<KeyPart> path, string prefix)
    {
        for (int i = 0; i < path.Count - 1; i++)
        {
            if (!table.Entries.TryGetValue(path[i].Name, out TomlEntry? entry))
            {
                TomlTable made = new(path[i].Span, TableOrigin.Dotted);
                entry = new TomlEntry(path[i].Span, null, made, null, null);
                table.Entries[path[i].Name] = entry;
            }

            if (entry.Table is not { Origin: TableOrigin.Dotted })
            {
                string dotted = KeyPart.Join(prefix, KeyPart.Dotted(path[..(i + 1)]));
                ReportTwice(path[i].Span, dotted, entry.Span);
                return null;
            }

            table = entry.Table;
        }

        return table;
    }

    private TomlEntry EntryOf(
        ValueSyntax value,
        SourceSpan span,
        string dotted,
        KeyValueSyntax pair
    )
    {
        if (value is InlineTableSyntax inline)
        {
            return new TomlEntry(span, null, InlineTable(inline, dotted), null, pair);
        }

        if (
            value is ArraySyntax { Items.ChildrenCount: > 0 } array
            && array.Items.All(item => item.Value is InlineTableSyntax)
        )
        {
            List<TomlTable> tables =
            [
                .. array.Items.Select(item => InlineTable((InlineTableSyntax)item.Value!, dotted)),
            ];
            return new TomlEntry(span, null, null, tables, pair);
        }

        return new TomlEntry(span, value, null, null, pair);
    }

    private TomlTable InlineTable(InlineTableSyntax inline, string dotted)
    {
        TomlTable table = new(inline.Span, TableOrigin.Inline, inline);
        AddItems(
            table,
            inline.Items.Select(item => item.KeyValue).OfType<KeyValueSyntax>(),
            dotted
        );
        return table;
    }

    private static bool IsClosed(TomlEntry entry) => entry.Pair is not null;

    private void ReportTwice(SourceSpan at, string key, SourceSpan earlier) =>
        diagnostics.Add(
            new Diagnostic(
                file,
                at.Start.Line + 1,
                at.Start.Column + 1,
                key,
                Words.Format("diagnostic.twice", Shown.Of(key), earlier.Start.Line + 1)
            )
        );
}
