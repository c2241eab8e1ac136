namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Places parts one after another, each where its far end comes to lie nearest the start of the first piece that takes it.</summary>
internal sealed class NestPlacer(NestTable table, IReadOnlyList<NestPiece> pieces)
{
    private const double SameMm = 1e-9;

    // A part without a place outweighs any stock; a more compact nest of the same length is a little better.
    private const double LeftMm2 = 1e12;
    private const double CompactShare = 1e-3;

    /// <summary>Places the parts.</summary>
    /// <param name="order">The parts in the order in which they are placed.</param>
    /// <param name="turns">Turn of each part, -1 for the best of all.</param>
    /// <param name="like">A nest whose first parts were the same in the same turns; what they took is taken over.</param>
    /// <param name="same">How many of the first parts were the same.</param>
    public NestLayout Place(
        IReadOnlyList<int> order,
        IReadOnlyList<int> turns,
        NestLayout? like = null,
        int same = 0
    )
    {
        List<NestSpot>[] spots = [.. pieces.Select(_ => new List<NestSpot>())];
        double[] used = new double[pieces.Count];
        double[] ends = new double[pieces.Count];
        List<int> left = [];
        Dictionary<int, int> before = same > 0 ? PiecesOf(like!) : [];
        for (int i = 0; i < order.Count; i++)
        {
            int part = order[i];
            (int piece, NestSpot? spot) =
                i >= same ? Find(part, turns[part], spots)
                : before.TryGetValue(part, out int on)
                    ? (on, like!.Spots[on].First(each => each.Part == part))
                : (0, null);
            if (spot is not { } found)
            {
                left.Add(part);
                continue;
            }

            spots[piece].Add(found);
            double end = found.XMm + table.Turned(part, found.Turn).WidthMm;
            used[piece] = Math.Max(used[piece], end);
            ends[piece] += end;
        }

        return new NestLayout(spots, used, left, Value(spots, used, ends, left.Count));
    }

    private static Dictionary<int, int> PiecesOf(NestLayout layout)
    {
        Dictionary<int, int> pieces = [];
        for (int i = 0; i < layout.Spots.Count; i++)
        {
            foreach (NestSpot spot in layout.Spots[i])
            {
                pieces[spot.Part] = i;
            }
        }

        return pieces;
    }

    private (int Piece, NestSpot? Spot) Find(int part, int turn, List<NestSpot>[] spots)
    {
        for (int piece = 0; piece < pieces.Count; piece++)
        {
            if (Best(part, turn, pieces[piece], spots[piece]) is { } spot)
            {
                return (piece, spot);
            }
        }

        return (0, null);
    }

    private double Value(List<NestSpot>[] spots, double[] used, double[] ends, int left)
    {
        int last = Array.FindLastIndex(spots, each => each.Count > 0);
        double value = left * LeftMm2;
        for (int i = 0; i <= last; i++)
        {
            if (spots[i].Count > 0)
            {
                double compact = CompactShare * ends[i] / spots[i].Count;
                value += pieces[i].WidthMm * ((i < last ? pieces[i].LengthMm : used[i]) + compact);
            }
        }

        return value;
    }

    private NestSpot? Best(int part, int turn, NestPiece piece, List<NestSpot> others)
    {
        NestSpot? best = null;
        double end = piece.LengthMm + (2 * SameMm);
        foreach (int each in table.TurnsOf(part, piece))
        {
            if ((turn < 0 || turn == each) && Best(part, each, piece, others, ref end) is { } found)
            {
                best = found;
            }
        }

        // A turn that does not fit gives way to any that does.
        return best is null && turn >= 0 ? Best(part, -1, piece, others) : best;
    }

    private NestSpot? Best(
        int part,
        int turn,
        NestPiece piece,
        List<NestSpot> others,
        ref double end
    )
    {
        TurnedOutline outline = table.Turned(part, turn);
        double room = piece.WidthMm - outline.HeightMm;
        if (room < -SameMm || outline.WidthMm > end)
        {
            return null;
        }

        NoFit[] noFits =
        [
            .. others.Select(other => table.NoFit(other.Part, other.Turn, part, turn)),
        ];
        NestSpot? best = null;
        int rows = (int)Math.Floor((room / table.RowMm) + 1e-9);
        for (int row = 0; row <= rows; row++)
        {
            double x = First(row, others, noFits, end - outline.WidthMm);
            if (x + outline.WidthMm < end - SameMm)
            {
                end = x + outline.WidthMm;
                best = new NestSpot(part, turn, row, x);
                if (x == 0)
                {
                    break;
                }
            }
        }

        return best;
    }

    // First place along a row that meets none of the others, or one beyond the end: pushed on until nothing pushes any more.
    private double First(int row, List<NestSpot> others, NoFit[] noFits, double end)
    {
        double x = 0;
        bool moved = true;
        while (moved && x < end)
        {
            moved = false;
            for (int i = 0; i < noFits.Length; i++)
            {
                double at = others[i].XMm;
                noFits[i]
                    .At(
                        row - others[i].Row,
                        out ReadOnlySpan<double> from,
                        out ReadOnlySpan<double> to
                    );
                for (int k = 0; k < from.Length; k++)
                {
                    if (x < at + to[k] && x > at + from[k])
                    {
                        x = at + to[k];
                        moved = true;
                    }
                }

                table.Work += 1 + from.Length;
            }
        }

        return x;
    }
}
