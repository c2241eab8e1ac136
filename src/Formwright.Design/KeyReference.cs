using System.Text;
using Formwright.Design.Reading;
using Formwright.Words;

namespace Formwright.Design;

/// <summary>The reference of the design file in the reader's language, from the same calls that read it.</summary>
public static class KeyReference
{
    private static readonly Wording Words = DesignWords.Of;

    /// <summary>A page of Markdown: a table of keys for every group.</summary>
    public static string Markdown()
    {
        StringBuilder page = new();
        page.Append("# ").Append(Words["reference.title"]).Append("\n\n");
        page.Append(Words["reference.intro"]).Append('\n');
        string[] columns = ["key", "what", "unit", "default", "range"];
        string head = string.Join(" | ", columns.Select(column => Words[$"reference.{column}"]));
        foreach (IGrouping<string, KeySpec> group in DesignText.Keys().GroupBy(spec => spec.Group))
        {
            string name = group.Key.EndsWith("[]", StringComparison.Ordinal)
                ? $"[[{group.Key[..^2]}]]"
                : $"[{group.Key}]";
            page.Append("\n## `").Append(name).Append("`\n\n");
            page.Append(group.First().GroupText).Append("\n\n");
            page.Append("| ").Append(head).Append(" |\n|---|---|---|---|---|\n");
            foreach (KeySpec spec in group)
            {
                string[] cells =
                [
                    $"`{spec.Name}`",
                    spec.Text,
                    spec.Unit,
                    Default(spec),
                    Range(spec),
                ];
                page.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
            }
        }

        return page.ToString();
    }

    /// <summary>What a key takes, in a few words: <c>3 to 60</c>, <c>"en", "es"</c>.</summary>
    public static string Range(KeySpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        string limits = Words.Format("reference.limits", spec.Min, spec.Max);
        return spec.Kind switch
        {
            KeyKind.Choice => string.Join(", ", spec.Choices.Select(word => $"`\"{word}\"`")),
            KeyKind.Flag => "`true`, `false`",
            KeyKind.Text => Words.Format("reference.text", spec.Max),
            KeyKind.Whole => Words.Format("reference.whole", spec.Min, spec.Max),
            KeyKind.Lengths or KeyKind.Numbers => Words.Format("reference.list", limits),
            _ => limits,
        };
    }

    private static string Default(KeySpec spec) =>
        spec.Default switch
        {
            null => Words["reference.required"],
            "" => Words["reference.none"],
            _ => $"`{spec.Default}`",
        };
}
