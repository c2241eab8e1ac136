using System.Globalization;
using System.Text;

namespace Formwright.Design.Reading;

/// <summary>Text of a maker's file as it may stand in a message: short, on one line, and without characters that steer a terminal.</summary>
internal static class Shown
{
    private const int Most = 60;

    public static string Of(string text)
    {
        StringBuilder shown = new();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (shown.Length >= Most)
            {
                return shown.Append('…').ToString();
            }

            shown.Append(
                Rune.GetUnicodeCategory(rune)
                    is UnicodeCategory.Control
                        or UnicodeCategory.Format
                        or UnicodeCategory.LineSeparator
                        or UnicodeCategory.ParagraphSeparator
                        or UnicodeCategory.Surrogate
                    ? "\uFFFD"
                    : rune.ToString()
            );
        }

        return shown.ToString();
    }
}
