namespace Formwright.Curves.Offsetting;

/// <summary>
/// All places where strands cross each other or themselves. Spans are cut into pieces that turn by at most half a radian; pairs whose boxes
/// meet (sweep along x) are halved until their fat chords part or cross once, then Newton's method finds the place.
/// </summary>
internal sealed class Crossings
{
    private const double LargestTurn = 0.5;
    private const double NearlyStraight = 0.05;

    /// <summary>Lines that meet at less than this have no crossing to rounding.</summary>
    private const double ParallelRad = 1e-9;
    private const int Deepest = 40;
    private const int MostWork = 200_000;
    private const double SameMm = 1e-7;
    private const double MetMm = 1e-11;

    private readonly List<Strand> strands;
    private readonly List<Piece> pieces = [];
    private int work;

    internal Crossings(List<Strand> strands) => this.strands = strands;

    internal List<Cut> Cuts { get; } = [];

    internal List<Point> Places { get; } = [];

    /// <summary>The work was cut short.</summary>
    internal bool IsIncomplete => work > MostWork;

    internal void Find()
    {
        for (int strand = 0; strand < strands.Count; strand++)
        {
            List<OffsetSpan> spans = strands[strand].Spans;
            for (int span = 0; span < spans.Count; span++)
            {
                int parts = Math.Max(1, (int)Math.Ceiling(Bend(spans[span]) / LargestTurn));
                double end = spans[span].End;
                for (int k = 0; k < parts; k++)
                {
                    pieces.Add(
                        new(
                            this,
                            strand,
                            span,
                            end * k / parts,
                            end * (k + 1) / parts,
                            pieces.Count
                        )
                    );
                }
            }
        }

        Piece[] sorted = [.. pieces.OrderBy(piece => piece.Box.Min.X)];
        for (int i = 0; i < sorted.Length && !IsIncomplete; i++)
        {
            for (
                int j = i + 1;
                j < sorted.Length && sorted[j].Box.Min.X <= sorted[i].Box.Max.X;
                j++
            )
            {
                Piece a = sorted[i];
                Piece b = sorted[j];
                if (
                    a.Box.Min.Y <= b.Box.Max.Y
                    && b.Box.Min.Y <= a.Box.Max.Y
                    && !(strands[a.Strand].IsCutter && strands[b.Strand].IsCutter)
                    && !AreNeighbours(a, b)
                )
                {
                    Pair(a, b, 0);
                }
            }
        }
    }

    private static double Bend(OffsetSpan span) =>
        span.IsCorner
            ? span.End
            : span.End
                * Math.Max(
                    Math.Abs(span.Segment.CurvatureAt(span.From)),
                    Math.Abs(span.Segment.CurvatureAt(span.To))
                );

    /// <summary>Pieces that follow each other smoothly, and an end of the source's offset with its own circle, touch but don't cross.</summary>
    private bool AreNeighbours(Piece a, Piece b)
    {
        if (a.Strand == b.Strand)
        {
            return Math.Abs(a.Number - b.Number) == 1
                || (
                    strands[a.Strand].IsClosed
                    && ((IsFirst(a) && IsLast(b)) || (IsFirst(b) && IsLast(a)))
                );
        }

        return strands[b.Strand].IsCutter
            ? TouchesCircle(a, b)
            : strands[a.Strand].IsCutter && TouchesCircle(b, a);
    }

    private static bool IsFirst(Piece piece) => piece is { Span: 0, From: 0 };

    private bool IsLast(Piece piece) =>
        piece.Span == strands[piece.Strand].Spans.Count - 1
        && piece.To == strands[piece.Strand].Spans[^1].End;

    private bool TouchesCircle(Piece piece, Piece circle)
    {
        Point centre = strands[circle.Strand].Spans[0].Segment.Start;
        OffsetSpan span = strands[piece.Strand].Spans[piece.Span];
        bool isCircle = strands[circle.Strand] is { IsClosed: true, IsCutter: true };
        return isCircle
            && !span.IsCorner
            && (
                (IsFirst(piece) && span.Segment.PositionAt(span.From) == centre)
                || (
                    IsLast(piece)
                    && span.Segment.PositionAt(span.To).DistanceTo(centre) < Chain.JoinToleranceMm
                )
            );
    }

    private void Pair(Piece a, Piece b, int depth)
    {
        if (++work > MostWork || a.IsClearOf(b) || b.IsClearOf(a))
        {
            return;
        }

        double between = Math.Abs(Math.IEEERemainder((a.Chord.Angle - b.Chord.Angle), Math.PI));
        bool isSimple =
            a.Bend <= NearlyStraight
            && b.Bend <= NearlyStraight
            && between > a.Bend + b.Bend + ParallelRad;
        if ((isSimple && Meet(a, b)) || depth >= Deepest)
        {
            return;
        }

        if (a.IsSpot && b.IsSpot)
        {
            // Both are one place to rounding, as at the tip of a cusp: halving can't part them.
            Meet(a, b);
            return;
        }

        if (a.Bend * a.Chord.Length >= b.Bend * b.Chord.Length)
        {
            (Piece first, Piece second) = a.Halves(this);
            Pair(first, b, depth + 1);
            Pair(second, b, depth + 1);
        }
        else
        {
            (Piece first, Piece second) = b.Halves(this);
            Pair(a, first, depth + 1);
            Pair(a, second, depth + 1);
        }
    }

    /// <summary>Newton's method for the one place where two nearly straight pieces can cross.</summary>
    /// <returns>False when it did not settle: then they are halved further.</returns>
    private bool Meet(Piece a, Piece b)
    {
        OffsetSpan one = strands[a.Strand].Spans[a.Span];
        OffsetSpan other = strands[b.Strand].Spans[b.Span];
        double t = 0.5 * (a.From + a.To);
        double u = 0.5 * (b.From + b.To);
        bool isSettled = false;
        for (int round = 0; round < 30 && !isSettled; round++)
        {
            CurvePoint p = one.At(t);
            CurvePoint q = other.At(u);
            Vector miss = q.Position - p.Position;
            if (miss.Length < MetMm)
            {
                // Nearly parallel pieces meet before their parameters settle.
                isSettled = true;
                break;
            }

            Vector dp = p.Tangent * Speed(one, p, t);
            Vector dq = q.Tangent * Speed(other, q, u);
            double determinant = dp.Cross(dq);
            if (determinant == 0)
            {
                return false;
            }

            double beforeT = t;
            double beforeU = u;
            t = Math.Clamp(t + (miss.Cross(dq) / determinant), a.From, a.To);
            u = Math.Clamp(u + (miss.Cross(dp) / determinant), b.From, b.To);
            isSettled = Math.Abs(t - beforeT) + Math.Abs(u - beforeU) < 1e-11;
        }

        if (!isSettled)
        {
            return false;
        }

        Point place = one.At(t).Position;
        if (place.DistanceTo(other.At(u).Position) > SameMm)
        {
            // At the ends of the pieces and apart: they do not cross.
            return true;
        }

        Cut first = new(a.Strand, a.Span, t, Places.Count);
        Cut second = new(b.Strand, b.Span, u, Places.Count);
        for (int i = 0; i < Places.Count; i++)
        {
            if (
                Places[i].DistanceTo(place) < 10 * SameMm
                && IsSame(Cuts[2 * i], Cuts[(2 * i) + 1], first, second)
            )
            {
                return true;
            }
        }

        Places.Add(place);
        Cuts.Add(first);
        Cuts.Add(second);
        return true;
    }

    /// <summary>Found before, from the pieces beside these.</summary>
    private static bool IsSame(Cut a, Cut b, Cut first, Cut second) =>
        (Near(a, first) && Near(b, second)) || (Near(a, second) && Near(b, first));

    private static bool Near(Cut a, Cut b) =>
        a.Strand == b.Strand && Math.Abs(a.Span - b.Span) <= 1;

    private static double Speed(OffsetSpan span, CurvePoint at, double t) =>
        span.IsCorner
            ? Math.Abs(span.DistanceMm)
            : 1 - (span.Segment.CurvatureAt(span.From + t) * span.DistanceMm);

    /// <summary>Part of a span, with its chord and how far it may depart from it.</summary>
    private sealed class Piece
    {
        internal Piece(Crossings all, int strand, int span, double from, double to, int number)
        {
            Strand = strand;
            Span = span;
            From = from;
            To = to;
            Number = number;
            OffsetSpan whole = all.strands[strand].Spans[span];
            Start = whole.At(from).Position;
            End = whole.At(to).Position;
            Bend = Crossings.Bend(whole.Part(from, to));
            Thickness = 0.5 * Bend * whole.LengthMm(from, to);
            Box = Box.Empty.With(Start).With(End).Grown(Thickness + SameMm);
        }

        internal int Strand { get; }

        internal int Span { get; }

        internal double From { get; }

        internal double To { get; }

        internal int Number { get; }

        internal Point Start { get; }

        internal Point End { get; }

        /// <summary>Bound of the turning, rad.</summary>
        internal double Bend { get; }

        /// <summary>Bound of the distance from the chord, mm.</summary>
        internal double Thickness { get; }

        internal Box Box { get; }

        internal Vector Chord => End - Start;

        internal bool IsSpot => Chord.Length + Thickness < 0.1 * SameMm;

        /// <summary>All of the other lies to one side of this one's fat chord, or beyond one of its ends.</summary>
        internal bool IsClearOf(Piece other)
        {
            double length = Chord.Length;
            if (length == 0)
            {
                return other.Box.DistanceTo(Start) > Thickness + SameMm;
            }

            Vector along = Chord * (1 / length);
            double fat = Thickness + other.Thickness + SameMm;
            double h0 = along.Cross(other.Start - Start);
            double h1 = along.Cross(other.End - Start);
            double x0 = along.Dot(other.Start - Start);
            double x1 = along.Dot(other.End - Start);
            return (h0 > fat && h1 > fat)
                || (h0 < -fat && h1 < -fat)
                || (x0 < -fat && x1 < -fat)
                || (x0 > length + fat && x1 > length + fat);
        }

        internal (Piece First, Piece Second) Halves(Crossings all)
        {
            double middle = 0.5 * (From + To);
            return (
                new(all, Strand, Span, From, middle, Number),
                new(all, Strand, Span, middle, To, Number)
            );
        }
    }
}
