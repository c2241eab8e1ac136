namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Places parts one after another, each where its far end comes to lie nearest the start of the first piece that takes it.</summary>
internal sealed class NestPlacer(NestTable table, IReadOnlyList<NestPiece> pieces)
{
    private const double SameMm = 1e-9;

    // A part without a place outweighs any stock; a more compact nest of the same length is a little better.
    private const double LeftMm2 = 1e12;
    private const double CompactShare = 1e-3;

    // What stands on each piece while parts are placed, and the places along the rows that are looked at.
    private readonly List<NestSpot>[] spots = [.. pieces.Select(_ => new List<NestSpot>())];
    private readonly List<NoFit> noFits = [];
    private double[] places = [];

    /// <summary>Places the parts.</summary>
    /// <param name="order">The parts in the order in which they are placed.</param>
    /// <param name="turns">Turn of each part, -1 for the best of all.</param>
    /// <param name="like">A nest whose first parts were the same in the same turns; what they took is taken over.</param>
    /// <param name="same">How many of the first parts were the same.</param>
    /// <param name="most">Most that the nest may take, mm²; null is returned as soon as it is known to take more.</param>
    public NestLayout? Place(
        int[] order,
        int[] turns,
        NestLayout? like = null,
        int same = 0,
        double most = double.PositiveInfinity
    )
    {
        foreach (List<NestSpot> each in spots)
        {
            each.Clear();
        }

        int[] pieceOf = new int[turns.Length];
        NestSpot[] spotOf = new NestSpot[turns.Length];
        Array.Fill(pieceOf, -1);
        double[] used = new double[pieces.Count];
        double[] ends = new double[pieces.Count];
        int left = 0;
        for (int i = 0; i < order.Length; i++)
        {
            int part = order[i];
            (int piece, NestSpot found) =
                i < same ? (like!.PieceOf[part], like.SpotOf[part]) : Find(part, turns[part]);
            pieceOf[part] = piece;
            spotOf[part] = found;
            if (piece < 0)
            {
                left++;
                continue;
            }

            spots[piece].Add(found);
            double end = found.XMm + table.Turned(part, found.Turn).WidthMm;
            used[piece] = Math.Max(used[piece], end);
            ends[piece] += end;
            // More parts can't make it shorter, but more compact.
            if (i >= same && Value(used, ends, left, 0) > most)
            {
                return null;
            }
        }

        return new NestLayout(pieceOf, spotOf, used, Value(used, ends, left, CompactShare));
    }

    private (int Piece, NestSpot Spot) Find(int part, int turn)
    {
        for (int piece = 0; piece < pieces.Count; piece++)
        {
            if (Best(part, turn, pieces[piece], spots[piece]) is { } spot)
            {
                return (piece, spot);
            }
        }

        return (-1, default);
    }

    private double Value(double[] used, double[] ends, int left, double compactShare)
    {
        int last = Array.FindLastIndex(spots, each => each.Count > 0);
        double value = left * LeftMm2;
        for (int i = 0; i <= last; i++)
        {
            if (spots[i].Count > 0)
            {
                double compact = compactShare * ends[i] / spots[i].Count;
                value += pieces[i].WidthMm * ((i < last ? pieces[i].LengthMm : used[i]) + compact);
            }
        }

        return value;
    }

    private NestSpot? Best(int part, int turn, NestPiece piece, List<NestSpot> others)
    {
        double end = piece.LengthMm + (2 * SameMm);
        if (turn >= 0 && table.TurnsOf(part, piece).Contains(turn))
        {
            if (Best(part, turn, piece, others, ref end) is { } kept)
            {
                return kept;
            }
        }

        // A turn that does not fit gives way to any that does; on an empty piece to any of all.
        return Best(part, table.UsualTurnsOf(part, piece), piece, others)
            ?? (
                others.Count == 0 && table.TurnStep > 1
                    ? Best(part, table.TurnsOf(part, piece), piece, others)
                    : null
            );
    }

    private NestSpot? Best(int part, int[] turns, NestPiece piece, List<NestSpot> others)
    {
        NestSpot? best = null;
        double end = piece.LengthMm + (2 * SameMm);
        foreach (int turn in turns)
        {
            best = Best(part, turn, piece, others, ref end) ?? best;
        }

        return best;
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

        int rows = (int)Math.Floor((room / table.RowMm) + 1e-9) + 1;
        if (places.Length < rows)
        {
            places = new double[rows];
        }

        Span<double> starts = places.AsSpan(0, rows);
        if (!FindStarts(starts, part, turn, others, outline.WidthMm, end - SameMm))
        {
            return null;
        }

        NestSpot? best = null;
        for (int row = 0; row < rows; row++)
        {
            if (starts[row] + outline.WidthMm < end - SameMm)
            {
                end = starts[row] + outline.WidthMm;
                best = new NestSpot(part, turn, row, starts[row]);
            }
        }

        return best;
    }

    // For each row the first place along it that meets none of the others: pushed on until nothing pushes any more, or until none is of use.
    private bool FindStarts(
        Span<double> starts,
        int part,
        int turn,
        List<NestSpot> others,
        double widthMm,
        double endMm
    )
    {
        starts.Clear();
        noFits.Clear();
        foreach (NestSpot other in others)
        {
            noFits.Add(table.NoFit(other.Part, other.Turn, part, turn));
        }

        long work = 0;
        int quiet = 0;
        bool isOfUse = true;
        for (int i = 0; quiet < others.Count && isOfUse; i = i + 1 < others.Count ? i + 1 : 0)
        {
            if (noFits[i].Push(starts, others[i].Row, others[i].XMm, ref work))
            {
                quiet = 1;
                isOfUse = Lanes.Least(starts) + widthMm < endMm;
            }
            else
            {
                quiet++;
            }
        }

        table.Work += work;
        return isOfUse;
    }
}
