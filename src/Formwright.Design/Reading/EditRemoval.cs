using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>Takes a key, a table or an entry of a list out of a text.</summary>
internal static class EditRemoval
{
    public static string Cut(string text, string key)
    {
        EditTarget target = EditTarget.Find(text, key);
        if (target.Rest.Count > 0)
        {
            return target.Spliced(0, 0, "");
        }

        if (target.InList is { } list)
        {
            TomlTable entry = target.Chain[^1];
            return entry.Node is InlineTableSyntax inline
                ? CutItem(target, inline.Span.Start.Offset, inline.Span.End.Offset + 1)
                : CutAll(target, NodesOf(entry));
        }

        TomlEntry found = target.Entry!;
        if (found.Pair is not { } pair)
        {
            if (target.Chain[^1].Origin == TableOrigin.Inline)
            {
                // Dotted keys within { } make a group that has no place of its own.
                return found.Table!.Entries.Keys.Aggregate(
                    text,
                    (rest, name) => Cut(rest, $"{key}.{name}")
                );
            }

            return CutAll(
                target,
                found.Table is { } table ? NodesOf(table) : found.Tables!.SelectMany(NodesOf)
            );
        }

        int start = pair.Key!.Span.Start.Offset;
        int end = pair.Value!.Span.End.Offset + 1;
        return pair.Parent is InlineTableItemSyntax
            ? CutItem(target, start, end)
            : target.Spliced(LineStart(target.Text, start), LineEnd(target.Text, end - 1), "");
    }

    /// <summary>Every heading and every pair that a table holds, at any depth.</summary>
    public static IEnumerable<SyntaxNode> NodesOf(TomlTable table)
    {
        if (table.Node is TableSyntaxBase heading)
        {
            yield return heading;
        }

        foreach (TomlEntry entry in table.Entries.Values)
        {
            if (entry.Pair is { } pair)
            {
                yield return pair;
                continue;
            }

            IEnumerable<TomlTable> inner = entry.Table is { } one ? [one] : entry.Tables ?? [];
            foreach (SyntaxNode node in inner.SelectMany(NodesOf))
            {
                yield return node;
            }
        }
    }

    /// <summary>Offset of the last character of a pair, or of a table with its pairs (its comments on lines of their own apart).</summary>
    public static int LastOffset(SyntaxNode node) =>
        node switch
        {
            KeyValueSyntax pair => pair.Value!.Span.End.Offset,
            TableSyntaxBase { Items.ChildrenCount: > 0 } table => table
                .Items.Last()
                .Value!.Span.End.Offset,
            TableSyntaxBase table => table.CloseBracket!.Span.End.Offset,
            _ => node.Span.End.Offset,
        };

    /// <summary>Offset after the line end that follows <paramref name="offset"/>.</summary>
    public static int LineEnd(string text, int offset)
    {
        int end = text.IndexOf('\n', offset);
        return end < 0 ? text.Length : end + 1;
    }

    private static int LineStart(string text, int offset) =>
        offset == 0 ? 0 : text.LastIndexOf('\n', offset - 1) + 1;

    // Whole lines of all nodes, with the blank lines after them.
    private static string CutAll(EditTarget target, IEnumerable<SyntaxNode> nodes)
    {
        string text = target.Text;
        List<(int Start, int End)> parts =
        [
            .. nodes
                .Select(node =>
                    (LineStart(text, FirstOffset(node)), LineEnd(text, LastOffset(node)))
                )
                .Order(),
        ];
        char[] kept = new char[text.Length];
        int length = 0;
        int at = 0;
        foreach ((int start, int end) in parts)
        {
            if (start > at)
            {
                text.CopyTo(at, kept, length, start - at);
                length += start - at;
            }

            at = Math.Max(at, end);
            int blank;
            while (
                at < text.Length
                && (blank = LineEnd(text, at)) > at
                && text.AsSpan(at, blank - at).IsWhiteSpace()
            )
            {
                at = blank;
            }
        }

        text.CopyTo(at, kept, length, text.Length - at);
        length += text.Length - at;
        return target.Spliced(0, text.Length, new string(kept, 0, length));
    }

    private static int FirstOffset(SyntaxNode node) =>
        node switch
        {
            KeyValueSyntax pair => pair.Key!.Span.Start.Offset,
            TableSyntaxBase table => table.OpenBracket!.Span.Start.Offset,
            _ => node.Span.Start.Offset,
        };

    // An item of { } or [ ] with the comma that follows it, or else the one before it.
    private static string CutItem(EditTarget target, int start, int end)
    {
        string text = target.Text;
        int comma = end;
        while (comma < text.Length && char.IsWhiteSpace(text[comma]))
        {
            comma++;
        }

        if (comma < text.Length && text[comma] == ',')
        {
            end = comma + 1;
            while (end < text.Length && text[end] == ' ')
            {
                end++;
            }
        }
        else
        {
            int before = start - 1;
            while (before >= 0 && char.IsWhiteSpace(text[before]))
            {
                before--;
            }

            start = before >= 0 && text[before] == ',' ? before : start;
        }

        return target.Spliced(start, end, "");
    }
}
