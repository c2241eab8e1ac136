using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>Adds a key to a text, where a maker would look for it: at the end of its table.</summary>
internal static class EditInsertion
{
    public static string Add(EditTarget target, string value)
    {
        if (target.Rest.Count == 0)
        {
            throw new ArgumentException("The key names a whole entry of a list.", nameof(target));
        }

        if (target.Rest.Any(part => part.EndsWith(']')))
        {
            return AddEntry(target, value);
        }

        // The innermost table that stands somewhere in the text; the names of those below it that don't.
        int holder = target.Chain.FindLastIndex(table => table.Node is not null);
        List<string> below = [.. target.Names[holder..], .. target.Rest];
        string pair = $"{string.Join('.', below)} = {value}";
        if (target.Chain[holder].Node is InlineTableSyntax inline)
        {
            return IntoInline(target, inline, pair);
        }

        bool innermostIsDotted = target.Chain[^1].Origin == TableOrigin.Dotted;
        if (below.Count == 1 || innermostIsDotted)
        {
            return IntoTable(target, target.Chain[holder].Node!, pair);
        }

        // Its table has no heading yet.
        if (target.Names.Any(name => name.EndsWith(']')))
        {
            // Within an entry of a list, a heading at the end of the file would belong to the list's last entry.
            return IntoTable(target, target.Chain[holder].Node!, pair);
        }

        string heading = string.Join('.', target.Names.Concat(target.Rest).SkipLast(1));
        return AtEnd(target, $"[{heading}]", $"{below[^1]} = {value}");
    }

    // A key in an entry that follows the last of a list.
    private static string AddEntry(EditTarget target, string value)
    {
        string first = target.Rest[0];
        int bracket = first.IndexOf('[', StringComparison.Ordinal);
        bool isNext =
            bracket >= 0 && first[bracket..] == $"[{target.InList?.Entry.Tables?.Count ?? 0}]";
        bool isEmptyArray =
            target.InList?.Entry is { Value: ArraySyntax { Items.ChildrenCount: 0 } };
        bool isList =
            target.InList is null || target.InList?.Entry.Tables is not null || isEmptyArray;
        if (
            !isNext
            || !isList
            || target.Rest.Count < 2
            || target.Rest[1..].Any(part => part.EndsWith(']'))
        )
        {
            throw new ArgumentException("There is no such entry.", nameof(target));
        }

        string pair = $"{string.Join('.', target.Rest[1..])} = {value}";
        string list = string.Join('.', [.. target.Names, first[..bracket]]);
        if (target.InList?.Entry is { Pair.Value: ArraySyntax array })
        {
            int after =
                array.Items.ChildrenCount > 0
                    ? array.Items.Last().Value!.Span.End.Offset + 1
                    : array.OpenBracket!.Span.End.Offset + 1;
            string comma = array.Items.ChildrenCount > 0 ? ", " : "";
            return target.Spliced(after, after, $"{comma}{{ {pair} }}");
        }

        if (
            target.Names.Any(name => name.EndsWith(']'))
            || target.Chain[^1].Origin == TableOrigin.Inline
        )
        {
            throw new ArgumentException(
                "A list within a list or within { } can't be added to.",
                nameof(target)
            );
        }

        if (target.InList?.Entry is { Tables: { } tables })
        {
            int end = tables
                .SelectMany(EditRemoval.NodesOf)
                .Max(node => EditRemoval.LineEnd(target.Text, EditRemoval.LastOffset(node)));
            string gap = end > 0 && target.Text[end - 1] != '\n' ? target.NewLine : "";
            return target.Spliced(
                end,
                end,
                $"{gap}{target.NewLine}[[{list}]]{target.NewLine}{pair}{target.NewLine}"
            );
        }

        return AtEnd(target, $"[[{list}]]", pair);
    }

    private static string IntoInline(EditTarget target, InlineTableSyntax inline, string pair)
    {
        if (inline.Items.ChildrenCount == 0)
        {
            int start = inline.Span.Start.Offset;
            return target.Spliced(start, inline.Span.End.Offset + 1, $"{{ {pair} }}");
        }

        int after = inline.Items.Last().KeyValue!.Value!.Span.End.Offset + 1;
        return target.Spliced(after, after, $", {pair}");
    }

    // A line after the last pair of a table, or after its heading; at the top of a file that starts with a heading.
    private static string IntoTable(EditTarget target, SyntaxNode node, string pair)
    {
        int last = node switch
        {
            DocumentSyntax { KeyValues.ChildrenCount: > 0 } document => document
                .KeyValues.Last()
                .Value!.Span.End.Offset,
            DocumentSyntax => -1,
            _ => EditRemoval.LastOffset(node),
        };
        if (last < 0)
        {
            return target.Spliced(0, 0, pair + target.NewLine);
        }

        int end = EditRemoval.LineEnd(target.Text, last);
        return target.Text[end - 1] == '\n'
            ? target.Spliced(end, end, pair + target.NewLine)
            : target.Spliced(end, end, target.NewLine + pair + target.NewLine);
    }

    private static string AtEnd(EditTarget target, string heading, string pair)
    {
        string newLine = target.NewLine;
        int end = target.Text.Length;
        string gap =
            end == 0 ? ""
            : target.Text.EndsWith('\n') ? newLine
            : newLine + newLine;
        return target.Spliced(end, end, $"{gap}{heading}{newLine}{pair}{newLine}");
    }
}
