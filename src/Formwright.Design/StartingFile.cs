using System.Globalization;
using System.Text;
using Formwright.Design.Reading;
using Formwright.Words;
using Tomlyn.Syntax;

namespace Formwright.Design;

/// <summary>
/// The file that a maker starts from: the figures of a model with every key explained in the maker's language, from the same texts as
/// the reference.
/// </summary>
public static class StartingFile
{
    private const int LineWidth = 100;
    private static readonly Wording Words = DesignWords.Of;

    /// <summary>The text of the file, in <see cref="CultureInfo.CurrentUICulture"/>.</summary>
    /// <param name="model">Name of one of <see cref="DesignModels.Names"/>.</param>
    /// <param name="allKeys">Whether keys that the model leaves out are written too, commented out, with their defaults.</param>
    /// <exception cref="ArgumentException">There is no such model.</exception>
    public static string Text(string model, bool allKeys = false)
    {
        string source = DesignModels.TextOf(model);
        if (CultureInfo.CurrentUICulture.TwoLetterISOLanguageName == "es")
        {
            source = DesignEdit.Set(source, "sheets.language", "\"es\"");
        }

        DocumentSyntax document = new SyntaxReader(model, []).Read(source)!;
        TomlTable root = new TomlTreeBuilder(model, []).Build(document);
        StringBuilder text = new();
        string name = DesignText.Parse(source, model).Design!.Identity.Name;
        Comment(text, Words.Format("starting.first", name));
        Comment(text, Words["starting.lengths"]);
        Comment(text, Words[allKeys ? "starting.off" : "starting.more"]);
        foreach (IGrouping<string, KeySpec> group in DesignText.Keys().GroupBy(spec => spec.Group))
        {
            IReadOnlyList<TomlTable> tables = Tables(root, group.Key);
            for (int i = 0; i < tables.Count; i++)
            {
                Group(text, source, [.. group], tables[i], explained: i == 0, allKeys);
            }

            if (tables.Count == 0 && allKeys)
            {
                Group(text, source, [.. group], null, explained: true, allKeys);
            }
        }

        return text.ToString();
    }

    private static void Group(
        StringBuilder text,
        string source,
        IReadOnlyList<KeySpec> keys,
        TomlTable? table,
        bool explained,
        bool allKeys
    )
    {
        bool isList = keys[0].Group.EndsWith("[]", StringComparison.Ordinal);
        string heading = isList ? $"[[{keys[0].Group[..^2]}]]" : $"[{keys[0].Group}]";
        text.Append('\n');
        if (explained)
        {
            Comment(text, keys[0].GroupText);
        }

        // A heading without keys is harmless, except in a list, where it would be an entry.
        bool isOff = table is null && isList;
        text.Append(isOff ? "#" : "").Append(heading).Append('\n');
        foreach (KeySpec key in keys)
        {
            string? value = table?.Entries.GetValueOrDefault(key.Name)?.Value is { } given
                ? source[given.Span.Start.Offset..(given.Span.End.Offset + 1)]
                : null;
            if (value is null && !(allKeys && explained))
            {
                continue;
            }

            if (explained)
            {
                Comment(text, key.Text);
            }

            text.Append(value is null ? "#" : "").Append(key.Name).Append(" = ");
            text.Append(value ?? key.Default ?? "").Append('\n');
        }
    }

    // The tables of a group that the model gives: none, one, or the entries of a list.
    private static IReadOnlyList<TomlTable> Tables(TomlTable root, string group)
    {
        IReadOnlyList<TomlTable> tables = [root];
        foreach (string part in group.Split('.'))
        {
            string name = part.Replace("[]", "", StringComparison.Ordinal);
            tables =
            [
                .. tables
                    .Select(table => table.Entries.GetValueOrDefault(name))
                    .OfType<TomlEntry>()
                    .SelectMany(entry => entry.Table is { } one ? [one] : entry.Tables ?? []),
            ];
        }

        return tables;
    }

    private static void Comment(StringBuilder text, string words)
    {
        int column = 0;
        foreach (string word in words.Split(' '))
        {
            if (column == 0 || column + 1 + word.Length > LineWidth)
            {
                text.Append(column == 0 ? "#" : "\n#");
                column = 1;
            }

            text.Append(' ').Append(word);
            column += 1 + word.Length;
        }

        text.Append('\n');
    }
}
