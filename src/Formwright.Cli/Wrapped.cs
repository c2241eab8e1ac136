namespace Formwright.Cli;

/// <summary>Breaks text into lines of a width at its blanks.</summary>
internal static class Wrapped
{
    public static IEnumerable<string> Lines(string text, int width)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }
}
