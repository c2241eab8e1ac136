using System.Globalization;
using System.Text;
using Formwright.Design.Reading;

namespace Formwright.Trace.Files;

/// <summary>Makes a diagnostic of a trace file. What is quoted from the file is short and can't steer a terminal.</summary>
internal static class TraceDiagnostic
{
    private const int Longest = 200;

    internal static Diagnostic Of(
        string file,
        int line,
        int column,
        string key,
        params object?[] values
    ) =>
        new(
            file,
            Math.Max(1, line),
            Math.Max(1, column),
            "",
            TraceWords.Of.Format(
                key,
                [.. values.Select(value => value is string text ? Plain(text) : value)]
            )
        );

    private static string Plain(string text)
    {
        StringBuilder plain = new();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (plain.Length >= Longest)
            {
                return plain.Append('…').ToString();
            }

            bool isPlain =
                Rune.GetUnicodeCategory(rune)
                is not (
                    UnicodeCategory.Control
                    or UnicodeCategory.Format
                    or UnicodeCategory.LineSeparator
                    or UnicodeCategory.ParagraphSeparator
                    or UnicodeCategory.PrivateUse
                    or UnicodeCategory.OtherNotAssigned
                );
            plain.Append(isPlain ? rune.ToString() : "·");
        }

        return plain.ToString();
    }
}
