namespace Formwright.Curves;

/// <summary>
/// Branch and bound for the nearest place of a chain. A piece of length L whose ends are d₀ and d₁ away holds nothing nearer than
/// (d₀ + d₁ - L)/2. Pieces are halved until the derivative of the half squared distance, g(s) = (P - Q)·T, is proved monotone; then its
/// root, if it has one, is found by bracketed Newton steps.
/// </summary>
internal ref struct NearestSearch(Chain chain, Point place)
{
    // A place at the very centre of an arc keeps all its pieces in play: beyond this depth the piece is so short that its
    // best end and its Newton root agree to rounding.
    private const int Deepest = 10;

    private double best = double.PositiveInfinity;
    private double bestArc;
    private CurvePoint bestPoint;

    internal NearestPoint Run(int firstSegment, int endSegment)
    {
        ReadOnlySpan<EulerSegment> segments = chain.Segments.AsSpan();
        int nearest = firstSegment;
        double least = double.PositiveInfinity;
        for (int i = firstSegment; i < endSegment; i++)
        {
            double d = segments[i].Start.DistanceTo(place);
            (least, nearest) = d < least ? (d, i) : (least, nearest);
        }

        Offer(nearest, 0);
        Point end = segments[endSegment - 1].PositionAt(segments[endSegment - 1].LengthMm);
        if (end.DistanceTo(place) < best)
        {
            Offer(endSegment - 1, segments[endSegment - 1].LengthMm);
        }

        // The neighbours of the nearest node first: they make the bound sharp.
        Whole(segments, nearest, endSegment, end);
        if (nearest > firstSegment)
        {
            Whole(segments, nearest - 1, endSegment, end);
        }

        for (int i = firstSegment; i < endSegment; i++)
        {
            if (i != nearest && i != nearest - 1)
            {
                Whole(segments, i, endSegment, end);
            }
        }

        return new(
            new(bestArc, bestPoint),
            best,
            bestPoint.Tangent.Cross(place - bestPoint.Position) > 0
        );
    }

    private void Whole(ReadOnlySpan<EulerSegment> segments, int i, int endSegment, Point end)
    {
        ref readonly EulerSegment segment = ref segments[i];
        Point to = i + 1 < endSegment ? segments[i + 1].Start : end;
        double d0 = segment.Start.DistanceTo(place);
        double d1 = to.DistanceTo(place);
        if (0.5 * (d0 + d1 - segment.LengthMm) < best && FromChord(segment, to, d0, d1) < best)
        {
            Piece(i, segment, 0, segment.LengthMm, d0, d1, 0);
        }
    }

    /// <summary>
    /// A bound that is sharp for short segments: distance from the chord, less the height κL²/8 that a segment of at most a radian can
    /// rise over it.
    /// </summary>
    private readonly double FromChord(in EulerSegment segment, Point to, double d0, double d1)
    {
        double length = segment.LengthMm;
        double steepest = Math.Max(
            Math.Abs(segment.StartCurvature),
            Math.Abs(segment.EndCurvature)
        );
        if (!(steepest * length <= 1))
        {
            return 0;
        }

        Vector chord = to - segment.Start;
        Vector away = place - segment.Start;
        double squares = chord.Dot(chord);
        double along = away.Dot(chord);
        double distance =
            along <= 0 ? d0
            : along >= squares ? d1
            : Math.Abs(chord.Cross(away)) / Math.Sqrt(squares);
        return distance - (0.125 * steepest * length * length);
    }

    private void Piece(
        int index,
        in EulerSegment segment,
        double from,
        double to,
        double d0,
        double d1,
        int depth
    )
    {
        double length = to - from;
        if (0.5 * (d0 + d1 - length) >= best)
        {
            return;
        }

        double middle = 0.5 * (from + to);
        CurvePoint at = segment.At(middle);
        Vector away = at.Position - place;
        double k0 = segment.CurvatureAt(from);
        double k1 = segment.CurvatureAt(to);
        double steepest = Math.Max(Math.Abs(k0), Math.Abs(k1));
        double distance = away.Length;
        double reach = away.Dot(at.Normal);
        double spread = 0.5 * length * (1 + (distance * steepest));
        double low = reach - spread;
        double high = reach + spread;
        (double least, double most) = Products(Math.Min(k0, k1), Math.Max(k0, k1), low, high);
        if (1 + least > 0 || depth == Deepest)
        {
            Root(index, segment, from, to, middle, at);
        }
        else if (1 + most >= 0)
        {
            Piece(index, segment, from, middle, d0, distance, depth + 1);
            Piece(index, segment, middle, to, distance, d1, depth + 1);
            if (distance < best)
            {
                Offer(index, middle);
            }
        }
        // Otherwise the distance is concave: the nearest place is one of the ends, which are known.
    }

    private static (double Least, double Most) Products(double a, double b, double c, double d)
    {
        double ac = a * c;
        double ad = a * d;
        double bc = b * c;
        double bd = b * d;
        return (
            Math.Min(Math.Min(ac, ad), Math.Min(bc, bd)),
            Math.Max(Math.Max(ac, ad), Math.Max(bc, bd))
        );
    }

    private void Root(
        int index,
        in EulerSegment segment,
        double from,
        double to,
        double s,
        CurvePoint at
    )
    {
        for (int i = 0; i < 60; i++)
        {
            Vector away = at.Position - place;
            double g = away.Dot(at.Tangent);
            double slope = 1 + (at.Curvature * away.Dot(at.Normal));
            if (g > 0)
            {
                to = s;
            }
            else
            {
                from = s;
            }

            double next = s - (g / slope);
            if (!(next >= from && next <= to))
            {
                next = 0.5 * (from + to);
            }

            double step = Math.Abs(next - s);
            s = next;
            at = segment.At(s);
            if (step <= 1e-14 * segment.LengthMm)
            {
                break;
            }
        }

        if (at.Position.DistanceTo(place) < best)
        {
            Offer(index, s);
        }
    }

    private void Offer(int index, double s)
    {
        CurvePoint at = chain.Segments[index].At(s);
        double distance = at.Position.DistanceTo(place);
        if (distance < best)
        {
            best = distance;
            bestArc = chain.StartOf(index) + s;
            bestPoint = at;
        }
    }
}
