namespace Formwright.Curves;

/// <content>Cut, joined, turned around, moved.</content>
public sealed partial class Chain
{
    /// <summary>The part between two arc lengths; on a closed chain <paramref name="toMm"/> may run past the end (or lie before
    /// <paramref name="fromMm"/>), and the part then runs over the start.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside an open chain, or empty.</exception>
    public Chain Part(double fromMm, double toMm)
    {
        if (IsClosed && toMm <= fromMm)
        {
            toMm += LengthMm * Math.Ceiling((fromMm - toMm + JoinToleranceMm) / LengthMm);
        }

        double length = toMm - fromMm;
        if (!(length > 0) || length > LengthMm + JoinToleranceMm)
        {
            throw new ArgumentOutOfRangeException(
                nameof(toMm),
                toMm,
                "The part is empty or longer than the chain."
            );
        }

        (int segment, double s) = Locate(fromMm);
        List<EulerSegment> parts = [];
        while (length > 0 && parts.Count <= segments.Length)
        {
            EulerSegment whole = segments[segment];
            double take = Math.Min(whole.LengthMm - s, length);
            if (take > 0)
            {
                parts.Add(s == 0 && take == whole.LengthMm ? whole : whole.Part(s, s + take));
            }

            length -= take;
            s = 0;
            segment++;
            if (segment == segments.Length)
            {
                if (!IsClosed)
                {
                    break;
                }

                segment = 0;
            }
        }

        return new Chain(parts);
    }

    /// <summary>An open chain cut in two.</summary>
    public (Chain Before, Chain After) Split(double atMm) => (Part(0, atMm), Part(atMm, LengthMm));

    /// <summary>The same curve run from its end to its start.</summary>
    public Chain Reversed() =>
        new(segments.Reverse().Select(segment => segment.Reversed()), IsClosed);

    /// <summary>Mirrored in the x axis (the centreline).</summary>
    public Chain Mirrored() => new(segments.Select(segment => segment.Mirrored()), IsClosed);

    public Chain Moved(Vector step) =>
        new(segments.Select(segment => segment.Moved(step)), IsClosed);

    /// <summary>Turned about a place by an angle, rad, left positive.</summary>
    public Chain Rotated(double angle, Point about = default) =>
        new(segments.Select(segment => segment.Rotated(angle, about)), IsClosed);

    /// <summary>Scaled about the origin by a factor above 0.</summary>
    public Chain Scaled(double factor) =>
        new(segments.Select(segment => segment.Scaled(factor)), IsClosed);

    /// <summary>This open chain followed by another that starts where it ends.</summary>
    /// <param name="next">The chain that follows.</param>
    /// <param name="isClosed">The other ends where this one starts.</param>
    public Chain FollowedBy(Chain next, bool isClosed = false)
    {
        ArgumentNullException.ThrowIfNull(next);
        return new([.. segments, .. next.segments], isClosed);
    }
}
