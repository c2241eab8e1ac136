using System.Globalization;
using Tomlyn;
using Tomlyn.Model;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Formwright.Fuzz.Targets;

/// <summary>A TOML text as Tomlyn's own model sees it: every value by its full path, and every comment. It shares no code with our reader.</summary>
internal sealed class Flat
{
    private readonly List<(string Path, int Start, int End)> pairs = [];

    private Flat() { }

    public SortedDictionary<string, string> Values { get; } = new(StringComparer.Ordinal);

    public List<(int At, string Text)> Comments { get; } = [];

    /// <summary>Whether the text has a list of tables in pieces, with other headings between. Tomlyn 2.10.2's model keeps its last piece only.</summary>
    public bool IsInPieces { get; private set; }

    /// <summary>Null where Tomlyn refuses the text.</summary>
    public static Flat? Of(string text)
    {
        string plain = text.StartsWith('\uFEFF') ? text[1..] : text;
        try
        {
            DocumentSyntax document = SyntaxParser.Parse(plain, "", validate: true);
            if (document.HasErrors)
            {
                return null;
            }

            Flat flat = new() { IsInPieces = HasPieces(document) };
            flat.Add("", TomlSerializer.Deserialize<TomlTable>(plain)!);
            flat.CollectComments(document);
            foreach (KeyValueSyntax pair in document.Descendants().OfType<KeyValueSyntax>())
            {
                flat.pairs.Add(
                    (
                        pair.Key!.ToString().Trim(),
                        pair.Value!.Span.Start.Offset,
                        pair.Value.Span.End.Offset
                    )
                );
            }

            return flat;
        }
        catch (Exception known) when (known is TomlException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>Comments that stand within a value whose key ends like <paramref name="path"/>.</summary>
    public int CommentsIn(string path)
    {
        string last = path[(path.LastIndexOf('.') + 1)..];
        return pairs
            .Where(pair =>
                pair.Path.EndsWith(last, StringComparison.Ordinal)
                || pair.Path.EndsWith(last + '"', StringComparison.Ordinal)
            )
            .Sum(pair =>
                Comments.Count(comment => comment.At > pair.Start && comment.At < pair.End)
            );
    }

    /// <summary>Entries of a list.</summary>
    public int CountOf(string list) =>
        Values
            .Keys.Where(key => key.StartsWith(list + "[", StringComparison.Ordinal))
            .Select(key => key[..(key.IndexOf(']', list.Length) + 1)])
            .Distinct()
            .Count();

    private static bool HasPieces(DocumentSyntax document)
    {
        string[] headings =
        [
            .. document.Tables.Select(table =>
                string.Join(
                    '.',
                    table
                        .Name!.ToString()
                        .Split('.')
                        .Select(part => part.Trim(' ', '\t', '"', '\''))
                )
            ),
        ];
        HashSet<string> left = [];
        for (int i = 1; i < headings.Length; i++)
        {
            string before = headings[i - 1];
            for (int end = before.Length; end > 0; end = before.LastIndexOf('.', end - 1))
            {
                string part = before[..end];
                if (
                    headings[i] != part
                    && !headings[i].StartsWith(part + ".", StringComparison.Ordinal)
                )
                {
                    left.Add(part);
                }
            }

            if (
                left.Any(part =>
                    headings[i] == part
                    || headings[i].StartsWith(part + ".", StringComparison.Ordinal)
                )
            )
            {
                return true;
            }
        }

        return false;
    }

    private void CollectComments(SyntaxNode node)
    {
        CollectComments(node.LeadingTrivia);
        for (int i = 0; i < node.ChildrenCount; i++)
        {
            if (node.GetChild(i) is SyntaxNode child)
            {
                CollectComments(child);
            }
        }

        CollectComments(node.TrailingTrivia);
    }

    private void CollectComments(List<SyntaxTrivia>? trivia) =>
        Comments.AddRange(
            (trivia ?? [])
                .Where(each => each.Kind == TokenKind.Comment)
                .Select(each => (each.Span.Start.Offset, each.Text ?? ""))
        );

    private void Add(string path, object value)
    {
        switch (value)
        {
            case TomlTable table:
                if (path.Length > 0)
                {
                    Values[path] = "group";
                }

                foreach ((string key, object inner) in table)
                {
                    Add(path.Length == 0 ? key : $"{path}.{key}", inner);
                }

                break;
            case TomlTableArray tables:
                for (int i = 0; i < tables.Count; i++)
                {
                    Add($"{path}[{i}]", tables[i]);
                }

                break;
            case TomlArray array:
                Values[path] = "list";
                for (int i = 0; i < array.Count; i++)
                {
                    Add($"{path}[{i}]", array[i]!);
                }

                break;
            default:
                Values[path] =
                    $"{value.GetType().Name} {Convert.ToString(value, CultureInfo.InvariantCulture)}";
                break;
        }
    }
}
