namespace Formwright.Jigs.Stock.Nesting;

/// <summary>
/// Looks for the order and the turns of the parts that take the least stock: threshold accepting (Dueck &amp; Scheuer 1990), many short times
/// from the best of a few plain orders, then from the best nests so found; on high rows, and at last on low ones. The same parts give the same nest everywhere: it counts its
/// work, not the time.
/// </summary>
internal sealed class NestSearch
{
    private const int Finalists = 12;
    private const double CoarseRows = 72;
    private const double MostRowMm = 8;
    private const double FineRowMm = 1.5;
    private const double FineRowOfManyMm = 3;
    private const int Many = 8;

    // Share by which a worse nest may be worse at first.
    private const double Wide = 0.1;
    private const double Narrow = 0.02;

    // Changes to try for each part; after that hardly any is new.
    private const int ChangesOfPart = 60;

    // Short searches at the usual effort for each part; of every five two start anew, the others in turn from the best few found.
    private const int RoundsOfPart = 40;
    private const int Cycle = 5;
    private const int NewOfCycle = 2;
    private const int Elite = 4;

    private readonly NestTable table;
    private readonly NestPlacer placer;
    private readonly int[] order;
    private readonly int[] turns;

    // Whether a part stands in the best of its turns, those before it given.
    private readonly bool[] isBestTurn;
    private readonly List<(double Value, int[] Order, int[] Turns)> finalists = [];
    private ulong seed = 0x9E3779B97F4A7C15;

    private NestSearch(NestTable table, IReadOnlyList<NestPiece> pieces)
    {
        this.table = table;
        placer = new NestPlacer(table, pieces);
        order = new int[table.KindOf.Length];
        turns = new int[order.Length];
        Array.Fill(turns, -1);
        isBestTurn = new bool[order.Length];
    }

    /// <summary>The best nest found, and the table that it counts its rows by.</summary>
    /// <param name="outlines">The parts.</param>
    /// <param name="kerfMm">Least distance between two parts, mm.</param>
    /// <param name="pieces">Pieces of stock in the order in which they are taken.</param>
    /// <param name="effort">Most pairs of stretches to look at; the first nests are made whatever they take.</param>
    public static (NestTable Table, NestLayout Layout) Of(
        IReadOnlyList<NestOutline> outlines,
        double kerfMm,
        IReadOnlyList<NestPiece> pieces,
        long effort
    )
    {
        double longest = outlines.Max(outline =>
            outline.BoxTurned(0) is var box ? Math.Max(box.WidthMm, box.HeightMm) : 0
        );
        NestTable coarse = new(
            outlines,
            kerfMm,
            Math.Clamp(longest / CoarseRows, FineRowMm, MostRowMm)
        );
        NestSearch wide = new(coarse, pieces);
        NestLayout best = wide.FirstLayout();
        if (outlines.Count == 1)
        {
            return (coarse, best);
        }

        best = wide.Rounds(best, effort);
        double row = outlines.Count > Many ? FineRowOfManyMm : FineRowMm;
        NestSearch close = new(new NestTable(outlines, kerfMm, row), pieces);
        NestLayout fine = close.Improve(
            close.BestOf(wide.finalists, effort / 10),
            close.table.Work + (effort / 20),
            Narrow
        );
        return fine.Value < best.Value ? (close.table, fine) : (coarse, best);
    }

    // Several short searches find more kinds of nest than one long one; more effort adds more of them after the same first ones.
    private NestLayout Rounds(NestLayout first, long effort)
    {
        NestLayout best = first;
        int[] firstOrder = [.. order];
        int[] firstTurns = [.. turns];
        long end = table.Work + effort;
        double share = (double)effort / StockPlanner.UsualEffort;
        double rounds = RoundsOfPart * order.Length * share;
        for (int round = 0; round < rounds && table.Work < end; round++)
        {
            (int[] startOrder, int[] startTurns) =
                round % Cycle < NewOfCycle ? (firstOrder, firstTurns) : Good(round);
            startOrder.CopyTo(order, 0);
            startTurns.CopyTo(turns, 0);
            Array.Clear(isBestTurn);
            NestLayout start = placer.Place(order, turns)!;
            NestLayout found = Improve(start, end, Wide);
            best = found.Value < best.Value ? found : best;
        }

        return best;
    }

    private (int[] Order, int[] Turns) Good(int round)
    {
        (_, int[] goodOrder, int[] goodTurns) = finalists[round % Math.Min(Elite, finalists.Count)];
        return (goodOrder, goodTurns);
    }

    // The best of the finalists of a coarser search, placed anew; at least the first of them.
    private NestLayout BestOf(List<(double Value, int[] Order, int[] Turns)> others, long effort)
    {
        NestLayout? best = null;
        foreach ((_, int[] otherOrder, int[] otherTurns) in others)
        {
            NestLayout layout = placer.Place(otherOrder, otherTurns)!;
            if (best is null || layout.Value < best.Value)
            {
                best = layout;
                otherOrder.CopyTo(order, 0);
                otherTurns.CopyTo(turns, 0);
            }

            if (table.Work > effort)
            {
                break;
            }
        }

        Accept(best!);
        return best!;
    }

    // Largest box first, longest first, widest in one direction first.
    private NestLayout FirstLayout()
    {
        NestLayout? best = null;
        int[] bestOrder = [];
        foreach (
            Func<TurnedOutline, double> size in (Func<TurnedOutline, double>[])
                [
                    outline => outline.WidthMm * outline.HeightMm,
                    outline => Math.Max(outline.WidthMm, outline.HeightMm),
                    outline => Math.Min(outline.WidthMm, outline.HeightMm),
                ]
        )
        {
            int[] sorted =
            [
                .. Enumerable
                    .Range(0, order.Length)
                    .OrderByDescending(part => size(table.Turned(part, 0)))
                    .ThenBy(part => part),
            ];
            NestLayout layout = placer.Place(sorted, turns)!;
            if (best is null || layout.Value < best.Value)
            {
                (best, bestOrder) = (layout, sorted);
            }

            if (order.Length == 1)
            {
                break;
            }
        }

        bestOrder.CopyTo(order, 0);
        Accept(best!);
        return best!;
    }

    // A worse nest is taken as long as it is not worse by more than a share that shrinks to nothing.
    private NestLayout Improve(NestLayout best, long end, double threshold)
    {
        NestLayout now = best;
        int[] keptOrder = new int[order.Length];
        int[] keptTurns = new int[order.Length];
        int most = ChangesOfPart * order.Length;
        for (int step = 0; step < most && table.Work < end; step++)
        {
            order.CopyTo(keptOrder, 0);
            turns.CopyTo(keptTurns, 0);
            if (!Change())
            {
                continue;
            }

            int same = 0;
            while (same < order.Length && IsSame(order[same], keptOrder[same], keptTurns))
            {
                same++;
            }

            if (same == order.Length)
            {
                continue;
            }

            double left = 1 - ((double)step / most);
            double worst = now.Value + (best.Value * threshold * left);
            int first = FirstChange(keptOrder, keptTurns);
            NestLayout? layout = placer.Place(order, turns, now, first, worst);
            if (layout?.Value <= worst)
            {
                now = layout;
                Accept(layout, first);
                if (now.Value < best.Value)
                {
                    best = layout;
                }
            }
            else
            {
                keptOrder.CopyTo(order, 0);
                keptTurns.CopyTo(turns, 0);
            }
        }

        return best;
    }

    private bool IsSame(int part, int kept, int[] keptTurns) =>
        table.KindOf[part] == table.KindOf[kept] && turns[part] == keptTurns[kept];

    private int FirstChange(int[] keptOrder, int[] keptTurns)
    {
        int i = 0;
        while (
            i < order.Length && order[i] == keptOrder[i] && turns[order[i]] == keptTurns[order[i]]
        )
        {
            i++;
        }

        return i;
    }

    // A turn that was free is kept as it was found: one turn costs a fraction of all of them.
    private void Accept(NestLayout layout, int first = 0)
    {
        foreach (int part in order.AsSpan(first))
        {
            isBestTurn[part] = turns[part] < 0;
            if (layout.PieceOf[part] >= 0)
            {
                turns[part] = layout.SpotOf[part].Turn;
            }
        }

        int at = finalists.FindIndex(other => other.Value >= layout.Value);
        at = at < 0 ? finalists.Count : at;
        if (at < Finalists && !(at < finalists.Count && finalists[at].Value == layout.Value))
        {
            finalists.Insert(at, (layout.Value, [.. order], [.. turns]));
            if (finalists.Count > Finalists)
            {
                finalists.RemoveAt(Finalists);
            }
        }
    }

    private bool Change()
    {
        int a = Next(order.Length);
        int b = Next(order.Length);
        switch (Next(10))
        {
            case < 2:
                (order[a], order[b]) = (order[b], order[a]);
                break;
            case < 4:
                int part = order[a];
                int step = a < b ? 1 : -1;
                for (int i = a; i != b; i += step)
                {
                    order[i] = order[i + step];
                }

                order[b] = part;
                break;
            case < 6:
                turns[a] = Next(NestTable.Turns / table.TurnStep) * table.TurnStep;
                break;
            case var _ when isBestTurn[a]:
                return false;
            default:
                turns[a] = -1;
                break;
        }

        return true;
    }

    // xorshift64* (Vigna 2016).
    private int Next(int below)
    {
        seed ^= seed >> 12;
        seed ^= seed << 25;
        seed ^= seed >> 27;
        return (int)((seed * 0x2545F4914F6CDD1D >> 33) % (ulong)below);
    }
}
