namespace Formwright.Drawing;

/// <summary>Breaks paragraphs into lines by the widths of the face.</summary>
internal static class Wrapping
{
    /// <summary>Lines no wider than <paramref name="widthMm"/>, unless a single word is; '\n' breaks a line.</summary>
    public static IReadOnlyList<string> Lines(string text, TextStyle style, double widthMm)
    {
        List<string> lines = [];
        foreach (string paragraph in text.Split('\n'))
        {
            string line = "";
            foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                string longer = line.Length == 0 ? word : $"{line} {word}";
                if (line.Length > 0 && style.WidthMm(longer) > widthMm)
                {
                    lines.Add(line);
                    line = word;
                }
                else
                {
                    line = longer;
                }
            }

            lines.Add(line);
        }

        return lines;
    }
}
