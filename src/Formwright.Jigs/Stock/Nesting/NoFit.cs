namespace Formwright.Jigs.Stock.Nesting;

/// <summary>
/// Where one turned outline can't stand beside another: for each step between their rows the stretches of the step along the sheet at which
/// they would meet (the no-fit polygon in rows; Art 1966, Bennell &amp; Oliveira 2008 on the idea).
/// </summary>
internal sealed class NoFit
{
    private readonly int first;
    private readonly int count;
    private readonly double[] from;
    private readonly double[] to;

    // Steps with a stretch in each layer: from the first of them, and behind the last.
    private readonly (int Start, int End)[] spans;

    private NoFit(int first, int layers, double[] from, double[] to)
    {
        this.first = first;
        this.from = from;
        this.to = to;
        count = layers > 0 ? from.Length / layers : 0;
        spans = new (int, int)[layers];
        for (int layer = 0; layer < layers; layer++)
        {
            ReadOnlySpan<double> starts = from.AsSpan(layer * count, count);
            int start = starts.IndexOfAnyExcept(double.PositiveInfinity);
            spans[layer] = (start, starts.LastIndexOfAnyExcept(double.PositiveInfinity) + 1);
        }
    }

    /// <summary>Pairs of stretches that were looked at.</summary>
    public long Work { get; private init; }

    /// <summary>Where one can't stand beside the other.</summary>
    /// <param name="still">The outline that stands.</param>
    /// <param name="moving">The outline that is placed.</param>
    public static NoFit Of(TurnedOutline still, TurnedOutline moving)
    {
        int first = 1 - moving.Rows;
        int count = still.Rows - first;
        int layers = 0;
        double[] from = [];
        double[] to = [];
        List<Stretch> united = [];
        long work = 0;
        for (int i = 0; i < count; i++)
        {
            int step = first + i;
            int row = Math.Max(0, step);
            int rows = Math.Min(still.Rows, moving.Rows + step) - row;
            united.Clear();
            for (int a = 0; a < still.Layers; a++)
            {
                for (int b = 0; b < moving.Layers; b++)
                {
                    Unite(
                        united,
                        still.From(a).Slice(row, rows),
                        still.To(a).Slice(row, rows),
                        moving.From(b).Slice(row - step, rows),
                        moving.To(b).Slice(row - step, rows)
                    );
                    work += rows;
                }
            }

            if (united.Count > layers)
            {
                Array.Resize(ref from, united.Count * count);
                Array.Resize(ref to, united.Count * count);
                from.AsSpan(layers * count).Fill(double.PositiveInfinity);
                to.AsSpan(layers * count).Fill(double.NegativeInfinity);
                layers = united.Count;
            }

            for (int layer = 0; layer < united.Count; layer++)
            {
                from[(layer * count) + i] = united[layer].From;
                to[(layer * count) + i] = united[layer].To;
            }
        }

        return new NoFit(first, layers, from, to) { Work = work };
    }

    /// <summary>The same two the other way round: every step and every stretch with its sign changed.</summary>
    public NoFit Reversed()
    {
        double[] reversedFrom = new double[from.Length];
        double[] reversedTo = new double[to.Length];
        for (int i = 0; i < count; i++)
        {
            int filled = spans.Length;
            while (filled > 0 && !(from[((filled - 1) * count) + i] < double.PositiveInfinity))
            {
                filled--;
            }

            for (int layer = 0; layer < spans.Length; layer++)
            {
                int other = layer < filled ? filled - 1 - layer : layer;
                reversedFrom[(layer * count) + count - 1 - i] = -to[(other * count) + i];
                reversedTo[(layer * count) + count - 1 - i] = -from[(other * count) + i];
            }
        }

        return new NoFit(1 - first - count, spans.Length, reversedFrom, reversedTo);
    }

    /// <summary>Moves places along the sheet on to where the outline that is placed no longer meets the one that stands; whether any was moved.</summary>
    /// <param name="places">For each row at which the placed outline may start, where it starts, mm.</param>
    /// <param name="stillRow">Row at which the standing one starts.</param>
    /// <param name="stillMm">Where it starts, mm.</param>
    /// <param name="work">Stretches that were looked at are added to it.</param>
    public bool Push(Span<double> places, int stillRow, double stillMm, ref long work)
    {
        bool moved = false;
        for (int layer = 0; layer < spans.Length; layer++)
        {
            int start = Math.Max(0, spans[layer].Start + first + stillRow);
            int rows = Math.Min(places.Length, spans[layer].End + first + stillRow) - start;
            if (rows <= 0)
            {
                continue;
            }

            work += rows;
            int at = (layer * count) + start - first - stillRow;
            moved |= Lanes.Push(
                places.Slice(start, rows),
                from.AsSpan(at, rows),
                to.AsSpan(at, rows),
                stillMm
            );
        }

        return moved;
    }

    // Stretches of neighbouring rows mostly overlap: they are made one before they meet those that are there.
    private static void Unite(
        List<Stretch> united,
        ReadOnlySpan<double> stillFrom,
        ReadOnlySpan<double> stillTo,
        ReadOnlySpan<double> movingFrom,
        ReadOnlySpan<double> movingTo
    )
    {
        double from = 0;
        double to = 0;
        for (int i = 0; i < stillFrom.Length; i++)
        {
            double nextFrom = stillFrom[i] - movingTo[i];
            double nextTo = stillTo[i] - movingFrom[i];
            if (nextFrom < to && nextTo > from)
            {
                from = nextFrom < from ? nextFrom : from;
                to = nextTo > to ? nextTo : to;
            }
            else if (nextFrom < nextTo)
            {
                if (from < to)
                {
                    Stretch.Add(united, new Stretch(from, to));
                }

                from = nextFrom;
                to = nextTo;
            }
        }

        if (from < to)
        {
            Stretch.Add(united, new Stretch(from, to));
        }
    }
}
