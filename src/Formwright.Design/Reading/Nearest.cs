namespace Formwright.Design.Reading;

/// <summary>The nearest of several words to one that was mistyped, by edit distance with swaps (Damerau 1964, restricted).</summary>
public static class Nearest
{
    /// <summary>The nearest word at a distance of at most a third of its length (at least two, one for words of three letters), or null.</summary>
    public static string? To(string given, IEnumerable<string> words)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(words);
        if (given.Length > 60)
        {
            return null;
        }

        return words
            .Select(word => (Word: word, Distance: Distance(given, word)))
            .Where(pair => pair.Distance <= Most(pair.Word.Length) && pair.Distance < given.Length)
            .OrderBy(pair => pair.Distance)
            .ThenBy(pair => pair.Word, StringComparer.Ordinal)
            .Select(pair => pair.Word)
            .FirstOrDefault();
    }

    private static int Most(int length) => length <= 3 ? 1 : Math.Max(2, length / 3);

    private static int Distance(string a, string b)
    {
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    d[i, j] = i + j;
                    continue;
                }

                int cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(
                    Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1),
                    d[i - 1, j - 1] + cost
                );
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
