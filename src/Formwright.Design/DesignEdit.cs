using Formwright.Design.Reading;
using Tomlyn.Syntax;

namespace Formwright.Design;

/// <summary>
/// Changes single values in the text of a design and leaves everything else as the maker wrote it: comments, order, spacing, line ends.
/// The edit is made in the text, at the place that the parser gives.
/// </summary>
/// <remarks>
/// A key is dotted; <c>[i]</c> names an entry of a list of tables: <c>harmonic_bars[1].at</c>. Its parts are bare keys
/// (letters, digits, hyphen, underscore), as all keys of a design are.
/// </remarks>
public static class DesignEdit
{
    /// <summary>Sets a key, adding it (and its table) where the text lacks it. The index after a list's last entry adds an entry.</summary>
    /// <param name="text">A text that parses; it need not be a whole design.</param>
    /// <param name="key">The key.</param>
    /// <param name="value">The value as TOML: <c>12.5</c>, <c>"3/4 in"</c>, <c>[18, 18]</c>.</param>
    /// <exception cref="ArgumentException">The text doesn't parse, the value is no TOML value, the key names a table, or an entry that is not there.</exception>
    public static string Set(string text, string key, string value)
    {
        EditTarget target = EditTarget.Find(text, key);
        CheckValue(value);
        if (target.Entry is { } entry)
        {
            ValueSyntax old =
                entry.Pair?.Value
                ?? throw new ArgumentException($"'{key}' is a group of keys.", nameof(key));
            return target.Spliced(old.Span.Start.Offset, old.Span.End.Offset + 1, value);
        }

        return EditInsertion.Add(target, value);
    }

    /// <summary>
    /// Removes a key with its line, or a table or an entry of a list with everything in it. The text comes back unchanged where it has no such key.
    /// Inside <c>{ }</c> and <c>[ ]</c> the pair or entry goes with its comma.
    /// </summary>
    /// <param name="text">A text that parses; it need not be a whole design.</param>
    /// <param name="key">The key.</param>
    /// <exception cref="ArgumentException">The text doesn't parse.</exception>
    public static string Remove(string text, string key) => EditRemoval.Cut(text, key);

    private static void CheckValue(string value)
    {
        ArgumentException.ThrowIfNullOrEmpty(value);
        const string before = "v = ";
        List<Diagnostic> faults = [];
        DocumentSyntax? document = new SyntaxReader("", faults).Read(before + value);
        if (
            document is null
            || faults.Count > 0
            || document.Tables.ChildrenCount > 0
            || document.KeyValues.ChildrenCount != 1
            || document.KeyValues.First().Value!.Span.Start.Offset != before.Length
            || document.KeyValues.First().Value!.Span.End.Offset != before.Length + value.Length - 1
        )
        {
            throw new ArgumentException("Not one TOML value.", nameof(value));
        }
    }
}
