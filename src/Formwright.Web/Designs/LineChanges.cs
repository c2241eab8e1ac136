namespace Formwright.Web.Designs;

/// <summary>Where two texts differ, line beside line.</summary>
public static class LineChanges
{
    private const int Most = 400;

    /// <summary>Pairs of lines that differ; a line that only one text has stands beside an empty one. Long texts are compared line by line.</summary>
    public static IReadOnlyList<(string Ours, string Theirs)> Of(string ours, string theirs)
    {
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        string[] a = ours.ReplaceLineEndings("\n").Split('\n');
        string[] b = theirs.ReplaceLineEndings("\n").Split('\n');
        return a.Length > Most || b.Length > Most ? Straight(a, b) : Aligned(a, b);
    }

    private static List<(string, string)> Straight(string[] a, string[] b)
    {
        List<(string, string)> pairs = [];
        for (int i = 0; i < Math.Max(a.Length, b.Length); i++)
        {
            (string x, string y) = (i < a.Length ? a[i] : "", i < b.Length ? b[i] : "");
            if (x != y)
            {
                pairs.Add((x, y));
            }
        }

        return pairs;
    }

    // Longest common subsequence; what lies between two common lines is paired in order.
    private static List<(string, string)> Aligned(string[] a, string[] b)
    {
        int[,] common = new int[a.Length + 1, b.Length + 1];
        for (int i = a.Length - 1; i >= 0; i--)
        {
            for (int j = b.Length - 1; j >= 0; j--)
            {
                common[i, j] =
                    a[i] == b[j]
                        ? common[i + 1, j + 1] + 1
                        : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        List<(string, string)> pairs = [];
        List<string> left = [];
        List<string> right = [];
        (int x, int y) = (0, 0);
        while (x < a.Length || y < b.Length)
        {
            if (x < a.Length && y < b.Length && a[x] == b[y])
            {
                Flush();
                (x, y) = (x + 1, y + 1);
            }
            else if (y >= b.Length || (x < a.Length && common[x + 1, y] >= common[x, y + 1]))
            {
                left.Add(a[x++]);
            }
            else
            {
                right.Add(b[y++]);
            }
        }

        Flush();
        return pairs;

        void Flush()
        {
            pairs.AddRange(Straight([.. left], [.. right]));
            left.Clear();
            right.Clear();
        }
    }
}
