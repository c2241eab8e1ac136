using System.Text.RegularExpressions;
using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>What a key names in a text: an entry, or the innermost table that would hold it.</summary>
internal sealed partial class EditTarget
{
    private readonly string mark;

    private EditTarget(string mark, string text, TomlTable root)
    {
        this.mark = mark;
        Text = text;
        Root = root;
        Chain = [root];
    }

    /// <summary>The text without its byte order mark.</summary>
    public string Text { get; }

    public TomlTable Root { get; }

    /// <summary>The tables on the way, from the root to the innermost that the text has.</summary>
    public List<TomlTable> Chain { get; }

    /// <summary>Names on the way to each table of <see cref="Chain"/> after the root.</summary>
    public List<string> Names { get; } = [];

    /// <summary>What is left of the key below the innermost table; more than one part where tables are lacking.</summary>
    public List<string> Rest { get; private set; } = [];

    /// <summary>The entry itself, where the text has it and it is no entry of a list.</summary>
    public TomlEntry? Entry { get; private set; }

    /// <summary>The list that the key's last step indexes, and the index; for removals and for adding an entry.</summary>
    public (TomlEntry Entry, int Index)? InList { get; private set; }

    public string NewLine => Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    public static EditTarget Find(string text, string key)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(key);
        string plain = DesignText.WithoutMark(text);
        List<Diagnostic> faults = [];
        DocumentSyntax? document = new SyntaxReader("", faults).Read(plain);
        TomlTable? root = document is null ? null : new TomlTreeBuilder("", faults).Build(document);
        if (root is null || faults.Count > 0)
        {
            throw new ArgumentException("The text doesn't parse.", nameof(text));
        }

        EditTarget target = new(text[..(text.Length - plain.Length)], plain, root);
        target.Walk(key);
        return target;
    }

    /// <summary>The whole text with the part from <paramref name="start"/> to <paramref name="end"/> replaced.</summary>
    public string Spliced(int start, int end, string with) =>
        string.Concat([mark, Text[..start], with, Text[end..]]);

    private void Walk(string key)
    {
        string[] parts = key.Split('.');
        if (!parts.All(part => Part().IsMatch(part)))
        {
            throw new ArgumentException($"'{key}' is no key of a design.", nameof(key));
        }

        for (int i = 0; i < parts.Length; i++)
        {
            Match part = Part().Match(parts[i]);
            string name = part.Groups["name"].Value;
            bool isLast = i == parts.Length - 1;
            if (!Chain[^1].Entries.TryGetValue(name, out TomlEntry? entry))
            {
                Rest = [.. parts[i..]];
                return;
            }

            if (part.Groups["index"] is { Success: true } digits)
            {
                int index = int.Parse(
                    digits.Value,
                    System.Globalization.CultureInfo.InvariantCulture
                );
                InList = (entry, index);
                if (entry.Tables is null || index >= entry.Tables.Count)
                {
                    Rest = [.. parts[i..]];
                    return;
                }

                Enter(parts[i], entry.Tables[index]);
                if (!isLast)
                {
                    InList = null;
                }

                continue;
            }

            if (isLast)
            {
                Entry = entry;
                return;
            }

            Enter(
                parts[i],
                entry.Table ?? throw new ArgumentException($"'{name}' is no group.", nameof(key))
            );
        }
    }

    private void Enter(string name, TomlTable table)
    {
        Names.Add(name);
        Chain.Add(table);
    }

    [GeneratedRegex(
        """\A(?<name>[A-Za-z0-9_-]+)(?:\[(?<index>[0-9]{1,4})\])?\z""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Part();
}
