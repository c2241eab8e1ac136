using Formwright.Words;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>
/// Turns TOML text into tables with places, and collects every fault of syntax and every key that stands twice.
/// The syntax itself is read by Tomlyn; its error-tolerant tree lets us go on after a fault.
/// </summary>
internal sealed class TomlTreeBuilder
{
    private readonly string file;
    private readonly List<Diagnostic> diagnostics;
    private static readonly Wording Words = DesignWords.Of;

    public TomlTreeBuilder(string file, List<Diagnostic> diagnostics)
    {
        this.file = file;
        this.diagnostics = diagnostics;
    }

    public TomlTable Build(string text)
    {
        TomlTable root = new(default);
        DocumentSyntax? document = Parse(text);
        if (document is null)
        {
            return root;
        }

        foreach (DiagnosticMessage message in document.Diagnostics)
        {
            Report(message.Span, "", Words.Format("diagnostic.syntax", message.Message));
        }

        if (document.HasErrors)
        {
            return root;
        }

        AddItems(root, document.KeyValues, "");
        foreach (TableSyntaxBase header in document.Tables)
        {
            AddHeader(root, header);
        }

        return root;
    }

    private DocumentSyntax? Parse(string text)
    {
        try
        {
            // Tomlyn 2.10 throws on a string that ends in a lone backslash at the end of the file.
            return SyntaxParser.Parse(text, file, true);
        }
        catch (ArgumentOutOfRangeException)
        {
            int lines = text.AsSpan().Count('\n') + 1;
            diagnostics.Add(new Diagnostic(file, lines, 1, "", Words["diagnostic.unclosed"]));
            return null;
        }
    }

    private void AddHeader(TomlTable root, TableSyntaxBase header)
    {
        if (header.Name is null)
        {
            return;
        }

        List<(string Name, SourceSpan Span)> path = PathOf(header.Name);
        TomlTable parent = root;
        for (int i = 0; i < path.Count - 1; i++)
        {
            parent = Descend(parent, path[i], header.Name.Span);
        }

        (string last, SourceSpan span) = path[^1];
        string dotted = string.Join('.', path.Select(part => part.Name));
        bool isList = header is TableArraySyntax;
        if (!parent.Entries.TryGetValue(last, out TomlEntry? entry))
        {
            TomlTable table = new(header.Name.Span);
            parent.Entries[last] = isList
                ? new(span, null, null, [table])
                : new(span, null, table, null);
            AddItems(table, header.Items, dotted);
        }
        else if (isList && entry.Tables is not null)
        {
            TomlTable table = new(header.Name.Span);
            entry.Tables.Add(table);
            AddItems(table, header.Items, dotted);
        }
        else if (!isList && entry.Table is { Span.Length: 0 } made)
        {
            // [a.b] made [a] in passing; now [a] itself is opened.
            AddItems(made, header.Items, dotted);
        }
        else
        {
            ReportTwice(header.Name.Span, dotted, entry.Span);
        }
    }

    private TomlTable Descend(TomlTable parent, (string Name, SourceSpan Span) part, SourceSpan at)
    {
        if (!parent.Entries.TryGetValue(part.Name, out TomlEntry? entry))
        {
            entry = new TomlEntry(part.Span, null, new TomlTable(default), null);
            parent.Entries[part.Name] = entry;
        }

        if (entry.Value is not null)
        {
            ReportTwice(at, part.Name, entry.Span);
            return new TomlTable(at);
        }

        return entry.Table ?? entry.Tables![^1];
    }

    private void AddItems(TomlTable table, IEnumerable<KeyValueSyntax> items, string prefix)
    {
        foreach (KeyValueSyntax item in items)
        {
            if (item.Key is null || item.Value is null)
            {
                continue;
            }

            List<(string Name, SourceSpan Span)> path = PathOf(item.Key);
            TomlTable parent = table;
            for (int i = 0; i < path.Count - 1; i++)
            {
                parent = Descend(parent, path[i], item.Key.Span);
            }

            (string name, SourceSpan span) = path[^1];
            string dotted = prefix.Length == 0 ? name : $"{prefix}.{name}";
            if (parent.Entries.TryGetValue(name, out TomlEntry? earlier))
            {
                ReportTwice(span, dotted, earlier.Span);
                continue;
            }

            parent.Entries[name] = EntryOf(item.Value, span, dotted);
        }
    }

    private TomlEntry EntryOf(ValueSyntax value, SourceSpan span, string dotted)
    {
        if (value is InlineTableSyntax inline)
        {
            TomlTable table = new(value.Span);
            AddItems(
                table,
                inline.Items.Select(item => item.KeyValue!).Where(pair => pair is not null),
                dotted
            );
            return new TomlEntry(span, null, table, null);
        }

        if (
            value is ArraySyntax array
            && array.Items.ChildrenCount > 0
            && array.Items.All(i => i.Value is InlineTableSyntax)
        )
        {
            List<TomlTable> tables =
            [
                .. array.Items.Select(item => EntryOf(item.Value!, span, dotted).Table!),
            ];
            return new TomlEntry(span, null, null, tables);
        }

        return new TomlEntry(span, value, null, null);
    }

    private static List<(string Name, SourceSpan Span)> PathOf(KeySyntax key)
    {
        List<(string, SourceSpan)> path = [(NameOf(key.Key), key.Key?.Span ?? key.Span)];
        foreach (DottedKeyItemSyntax item in key.DotKeys)
        {
            path.Add((NameOf(item.Key), item.Key?.Span ?? item.Span));
        }

        return path;
    }

    private static string NameOf(BareKeyOrStringValueSyntax? key) =>
        key switch
        {
            BareKeySyntax bare => bare.Key?.Text ?? "",
            StringValueSyntax quoted => quoted.Value ?? "",
            _ => "",
        };

    private void ReportTwice(SourceSpan at, string key, SourceSpan earlier) =>
        Report(at, key, Words.Format("diagnostic.twice", key, earlier.Start.Line + 1));

    private void Report(SourceSpan at, string key, string message) =>
        diagnostics.Add(new Diagnostic(file, at.Start.Line + 1, at.Start.Column + 1, key, message));
}
