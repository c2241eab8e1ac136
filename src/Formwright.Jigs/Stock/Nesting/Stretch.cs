namespace Formwright.Jigs.Stock.Nesting;

/// <summary>A stretch of a row.</summary>
/// <param name="From">Its start, mm.</param>
/// <param name="To">Its end, mm.</param>
internal readonly record struct Stretch(double From, double To)
{
    /// <summary>Sorts stretches and makes one of those that overlap. Two that only touch stay apart: what fits exactly may stand between.</summary>
    public static void Unite(List<Stretch> stretches)
    {
        stretches.Sort((a, b) => a.From.CompareTo(b.From));
        int last = -1;
        for (int i = 0; i < stretches.Count; i++)
        {
            if (last >= 0 && stretches[i].From < stretches[last].To)
            {
                stretches[last] = stretches[last] with
                {
                    To = Math.Max(stretches[last].To, stretches[i].To),
                };
            }
            else
            {
                stretches[++last] = stretches[i];
            }
        }

        stretches.RemoveRange(last + 1, stretches.Count - last - 1);
    }

    /// <summary>
    /// The first stretches of all rows, then the second of all rows and so on, so that one instruction serves several rows. Where a row has
    /// fewer a stretch starts at infinity and ends at minus infinity: nothing lies in it.
    /// </summary>
    public static (int Layers, double[] From, double[] To) InLayers(
        IReadOnlyList<List<Stretch>> rows
    )
    {
        int layers = rows.Count > 0 ? rows.Max(row => row.Count) : 0;
        double[] from = new double[layers * rows.Count];
        double[] to = new double[from.Length];
        Array.Fill(from, double.PositiveInfinity);
        Array.Fill(to, double.NegativeInfinity);
        for (int row = 0; row < rows.Count; row++)
        {
            for (int layer = 0; layer < rows[row].Count; layer++)
            {
                from[(layer * rows.Count) + row] = rows[row][layer].From;
                to[(layer * rows.Count) + row] = rows[row][layer].To;
            }
        }

        return (layers, from, to);
    }

    /// <summary>Adds a stretch to united ones and keeps them united.</summary>
    public static void Add(List<Stretch> united, Stretch added)
    {
        int at = 0;
        while (at < united.Count && united[at].To <= added.From)
        {
            at++;
        }

        int end = at;
        while (end < united.Count && united[end].From < added.To)
        {
            added = new Stretch(
                Math.Min(added.From, united[end].From),
                Math.Max(added.To, united[end].To)
            );
            end++;
        }

        if (end == at)
        {
            united.Insert(at, added);
        }
        else
        {
            united[at] = added;
            united.RemoveRange(at + 1, end - at - 1);
        }
    }
}
