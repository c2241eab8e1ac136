namespace Formwright.Curves;

/// <content>Nearest places, crossings, extremes.</content>
public sealed partial class Chain
{
    private Box? box;

    /// <summary>Smallest upright box around the chain.</summary>
    public Box Box
    {
        get
        {
            if (box is { } known)
            {
                return known;
            }

            Box grown = Box.Empty.With(Start.Position).With(End.Position);
            foreach (ChainPoint place in TangentsAlong(0).Concat(TangentsAlong(0.5 * Math.PI)))
            {
                grown = grown.With(place.Position);
            }

            foreach (EulerSegment segment in segments)
            {
                grown = grown.With(segment.Start);
            }

            box = grown;
            return grown;
        }
    }

    /// <summary>The nearest place of the chain; the first of them when several are equally near.</summary>
    /// <remarks>Branch and bound over segments and their halves, then Newton's method (<see cref="NearestSearch"/>): exact to rounding.</remarks>
    public NearestPoint Nearest(Point place) =>
        new NearestSearch(this, Guard.Finite(place)).Run(0, segments.Length);

    /// <summary>Where the chain meets the line x = <paramref name="xMm"/>, in order of arc length.</summary>
    public IReadOnlyList<ChainPoint> CrossingsAtX(double xMm) =>
        CrossingsWith(new(Guard.Finite(xMm), 0), 0.5 * Math.PI);

    /// <summary>Where the chain meets the line y = <paramref name="yMm"/>, in order of arc length.</summary>
    public IReadOnlyList<ChainPoint> CrossingsAtY(double yMm) =>
        CrossingsWith(new(0, Guard.Finite(yMm)), 0);

    /// <summary>Where the chain crosses a straight line, in order of arc length. A line that only touches may be missed by rounding.</summary>
    /// <param name="place">A place on the line.</param>
    /// <param name="angle">Its direction, rad.</param>
    /// <remarks>Between places where the tangent runs along the line the distance from it is monotone, so each root is bracketed.</remarks>
    public IReadOnlyList<ChainPoint> CrossingsWith(Point place, double angle)
    {
        Vector across = Vector.At(Guard.Finite(angle)).Left;
        // Along the axes the direction is exact.
        across =
            angle == 0 ? new(0, 1)
            : angle == 0.5 * Math.PI ? new(-1, 0)
            : across;
        List<ChainPoint> found = [];
        List<double> breaks = [];
        double before = (segments[0].Start - place).Dot(across);
        for (int i = 0; i < segments.Length; i++)
        {
            ref readonly EulerSegment segment = ref segments[i];
            double atEnd = (
                i + 1 < segments.Length ? segments[i + 1].Start - place
                : IsClosed ? segments[0].Start - place
                : segment.PositionAt(segment.LengthMm) - place
            ).Dot(across);
            if (before != 0 && Math.Abs(before) + Math.Abs(atEnd) > segment.LengthMm * (1 + 1e-9))
            {
                // Too short to reach the line from its start and come back to its end.
                before = atEnd;
                continue;
            }

            breaks.Clear();
            SegmentAngles.TangentsAlong(segment, angle, breaks);
            double from = 0;
            for (int k = 0; k <= breaks.Count; k++)
            {
                double to = k < breaks.Count ? breaks[k] : segment.LengthMm;
                double after =
                    k < breaks.Count ? (segment.PositionAt(to) - place).Dot(across) : atEnd;
                if (before == 0)
                {
                    found.Add(new(starts[i] + from, segment.At(from)));
                }
                else if (before * after < 0)
                {
                    double s = CrossingBetween(segment, place, across, from, to, before > 0);
                    found.Add(new(starts[i] + s, segment.At(s)));
                }

                from = to;
                before = after;
            }
        }

        if (before == 0 && !IsClosed)
        {
            found.Add(new(LengthMm, End));
        }

        return found;
    }

    /// <summary>
    /// Where the tangent runs along an angle (or against it), in order of arc length: at angle 0 the extremes of y, at π/2 those of x.
    /// Straight pieces along the angle give their ends.
    /// </summary>
    public IReadOnlyList<ChainPoint> TangentsAlong(double angle)
    {
        Guard.Finite(angle);
        List<ChainPoint> found = [];
        List<double> inside = [];
        for (int i = 0; i < segments.Length; i++)
        {
            EulerSegment segment = segments[i];
            inside.Clear();
            if (IsAlong(segment.StartAngle - angle))
            {
                inside.Add(0);
            }

            SegmentAngles.TangentsAlong(segment, angle, inside);
            if (IsAlong(segment.EndAngle - angle))
            {
                inside.Add(segment.LengthMm);
            }

            foreach (double s in inside)
            {
                double at = starts[i] + s;
                if (found.Count == 0 || at - found[^1].ArcLengthMm > JoinToleranceMm)
                {
                    found.Add(new(at, segment.At(s)));
                }
            }
        }

        return found;
    }

    private static bool IsAlong(double angle) =>
        Math.Abs(Math.IEEERemainder(angle, Math.PI)) < 1e-14;

    private static double CrossingBetween(
        in EulerSegment segment,
        Point place,
        Vector across,
        double from,
        double to,
        bool falling
    )
    {
        double s = 0.5 * (from + to);
        for (int i = 0; i < 100; i++)
        {
            double over = (segment.PositionAt(s) - place).Dot(across);
            if (over == 0)
            {
                return s;
            }

            if (over > 0 == falling)
            {
                from = s;
            }
            else
            {
                to = s;
            }

            double next = s - (over / Vector.At(segment.AngleAt(s)).Dot(across));
            if (!(next > from && next < to))
            {
                next = 0.5 * (from + to);
            }

            if (Math.Abs(next - s) <= 1e-15 * segment.LengthMm)
            {
                return next;
            }

            s = next;
        }

        return s;
    }
}
