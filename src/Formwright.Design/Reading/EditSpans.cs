using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>Where in the text an edit goes, from the spans of the parsed tree.</summary>
internal static class EditSpans
{
    public static string[] PathOf(KeySyntax key) =>
        [NameOf(key.Key), .. key.DotKeys.Select(item => NameOf(item.Key))];

    /// <summary>A pair added at the end of <c>{ … }</c>.</summary>
    public static string IntoInline(string text, InlineTableSyntax inline, string pair)
    {
        if (inline.Items.ChildrenCount == 0)
        {
            return Splice(
                text,
                inline.Span.Start.Offset,
                inline.Span.End.Offset + 1,
                $"{{ {pair} }}"
            );
        }

        int after = inline.Items.Last().KeyValue!.Value!.Span.End.Offset + 1;
        return Splice(text, after, after, $", {pair}");
    }

    /// <summary>A line added after the last pair of a table, or after its header.</summary>
    public static string IntoTable(string text, TableSyntaxBase table, string pair, string newLine)
    {
        int last =
            table.Items.ChildrenCount > 0
                ? table.Items.Last().Value!.Span.End.Offset
                : table.CloseBracket!.Span.End.Offset;
        int end = text.IndexOf('\n', last + 1);
        return end < 0
            ? $"{text}{newLine}{pair}{newLine}"
            : Splice(text, end + 1, end + 1, pair + newLine);
    }

    /// <summary>The text without a pair: its whole line in a table, the pair and its comma inside <c>{ }</c>.</summary>
    public static string Cut(string text, KeyValueSyntax pair)
    {
        int start = pair.Key!.Span.Start.Offset;
        int end = pair.Value!.Span.End.Offset + 1;
        if (pair.Parent is InlineTableItemSyntax)
        {
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

            return Splice(text, start, end, "");
        }

        int lineStart = text.LastIndexOf('\n', Math.Max(0, start - 1)) + 1;
        int lineEnd = text.IndexOf('\n', end);
        return Splice(text, lineStart, lineEnd < 0 ? text.Length : lineEnd + 1, "");
    }

    private static string Splice(string text, int start, int end, string with) =>
        string.Concat(text.AsSpan(0, start), with, text.AsSpan(end));

    private static string NameOf(BareKeyOrStringValueSyntax? key) =>
        key switch
        {
            BareKeySyntax bare => bare.Key?.Text ?? "",
            StringValueSyntax quoted => quoted.Value ?? "",
            _ => "",
        };
}
