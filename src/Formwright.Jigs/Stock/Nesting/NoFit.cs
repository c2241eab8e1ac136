namespace Formwright.Jigs.Stock.Nesting;

/// <summary>
/// Where one turned outline can't stand beside another: for each step between their rows the stretches of the step along the sheet at which
/// they would meet (the no-fit polygon in rows; Art 1966, Bennell &amp; Oliveira 2008 on the idea).
/// </summary>
internal sealed class NoFit
{
    private readonly int first;
    private readonly int[] start;
    private readonly double[] from;
    private readonly double[] to;

    private NoFit(int first, int[] start, double[] from, double[] to)
    {
        this.first = first;
        this.start = start;
        this.from = from;
        this.to = to;
    }

    /// <param name="still">The outline that stands.</param>
    /// <param name="moving">The outline that is placed.</param>
    public NoFit(TurnedOutline still, TurnedOutline moving)
    {
        first = 1 - moving.Rows;
        int count = still.Rows - first;
        start = new int[count + 1];
        List<Stretch> all = [];
        List<Stretch> united = [];
        for (int i = 0; i < count; i++)
        {
            int step = first + i;
            united.Clear();
            int row = Math.Max(0, step);
            int end = Math.Min(still.Rows, moving.Rows + step);
            for (; row < end; row++)
            {
                ReadOnlySpan<double> stillFrom = still.From(row);
                ReadOnlySpan<double> stillTo = still.To(row);
                ReadOnlySpan<double> movingFrom = moving.From(row - step);
                ReadOnlySpan<double> movingTo = moving.To(row - step);
                for (int a = 0; a < stillFrom.Length; a++)
                {
                    for (int b = 0; b < movingFrom.Length; b++)
                    {
                        Stretch.Add(
                            united,
                            new Stretch(stillFrom[a] - movingTo[b], stillTo[a] - movingFrom[b])
                        );
                        Work++;
                    }
                }
            }

            all.AddRange(united);
            start[i + 1] = all.Count;
        }

        from = [.. all.Select(stretch => stretch.From)];
        to = [.. all.Select(stretch => stretch.To)];
    }

    /// <summary>Pairs of stretches that were looked at.</summary>
    public int Work { get; }

    /// <summary>The same two the other way round: every step and every stretch with its sign changed.</summary>
    public NoFit Reversed()
    {
        int count = start.Length - 1;
        int[] reversedStart = [.. start.Reverse().Select(each => from.Length - each)];
        return new NoFit(
            -(first + count - 1),
            reversedStart,
            [.. to.Reverse().Select(each => -each)],
            [.. from.Reverse().Select(each => -each)]
        );
    }

    /// <summary>Stretches at a step between the rows, moving minus still.</summary>
    public void At(
        int step,
        out ReadOnlySpan<double> stretchFrom,
        out ReadOnlySpan<double> stretchTo
    )
    {
        int i = step - first;
        if (i < 0 || i >= start.Length - 1)
        {
            stretchFrom = [];
            stretchTo = [];
            return;
        }

        stretchFrom = from.AsSpan(start[i], start[i + 1] - start[i]);
        stretchTo = to.AsSpan(start[i], start[i + 1] - start[i]);
    }
}
