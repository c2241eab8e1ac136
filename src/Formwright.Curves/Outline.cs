namespace Formwright.Curves;

/// <summary>
/// An outline: half a closed curve (the treble half, y ≥ 0), mirrored on the centreline for the bass half. Body frame: u along the
/// centreline from the heel (0) to the tail, y towards the treble side.
/// </summary>
public sealed class Outline
{
    private Chain? closed;

    /// <param name="half">From the heel (0, 0) to the tail (body length, 0), y ≥ 0.</param>
    /// <exception cref="ArgumentException">It is closed, starts elsewhere, or ends off the centreline or before the heel.</exception>
    public Outline(Chain half)
    {
        ArgumentNullException.ThrowIfNull(half);
        Point heel = half.Start.Position;
        Point tail = half.End.Position;
        if (
            half.IsClosed
            || heel.DistanceTo(Point.Origin) > Chain.JoinToleranceMm
            || Math.Abs(tail.Y) > Chain.JoinToleranceMm
            || tail.X <= 0
        )
        {
            throw new ArgumentException(
                "Half an outline runs from (0, 0) to a place on the centreline beyond it.",
                nameof(half)
            );
        }

        Half = half;
    }

    /// <summary>The treble half from heel to tail. In the body frame it turns to the right on the bouts, so there its κ is below 0.</summary>
    public Chain Half { get; }

    public double BodyLengthMm => Half.End.Position.X;

    public double HalfPerimeterMm => Half.LengthMm;

    /// <summary>Area of the whole outline, mm².</summary>
    public double AreaMm2 => -2 * Half.SignedAreaMm2;

    /// <summary>Station of the area's centroid, mm (it lies on the centreline).</summary>
    public double CentroidUMm => Half.Centroid.X;

    /// <summary>The place of the smallest convex radius; null when the outline is nowhere convex.</summary>
    public ChainPoint? TightestConvex => Half.TightestRight;

    /// <summary>The place of the smallest hollow radius (the waist, as a rule); null when the outline is nowhere hollow.</summary>
    public ChainPoint? TightestHollow => Half.TightestLeft;

    /// <summary>Bouts and waist as they came out: where the tangent of the half runs along the centreline, from heel to tail.</summary>
    public IReadOnlyList<OutlineRow> Turns => [.. Half.TangentsAlong(0).Select(Row)];

    /// <summary>
    /// The whole closed chain, counter-clockwise from the heel (bass side to the tail, treble side back): convex is κ above 0, the
    /// inside is to the left.
    /// </summary>
    public Chain Closed => closed ??= Half.Mirrored().FollowedBy(Half.Reversed(), isClosed: true);

    /// <summary>Full width at a station, mm, between the outermost places; 0 outside the body.</summary>
    public double WidthAt(double uMm) => 2 * (AtStation(uMm)?.Position.Y ?? 0);

    /// <summary>The outermost place of the treble half at a station; null outside the body.</summary>
    public ChainPoint? AtStation(double uMm)
    {
        ChainPoint? outermost = null;
        foreach (ChainPoint place in Half.CrossingsAtX(uMm))
        {
            Offer(place);
        }

        // A flat lies on its station and is no crossing; both of its ends are joins or ends of the chain.
        for (int i = 0; i < Half.Segments.Length; i++)
        {
            if (Math.Abs(Half.Segments[i].Start.X - uMm) <= Chain.JoinToleranceMm)
            {
                Offer(new(Half.StartOf(i), Half.Segments[i].At(0)));
            }
        }

        if (outermost is null && Math.Abs(uMm - BodyLengthMm) <= Chain.JoinToleranceMm)
        {
            Offer(new(Half.LengthMm, Half.End));
        }

        return outermost;

        void Offer(ChainPoint place)
        {
            if (outermost is not { } known || place.Position.Y > known.Position.Y)
            {
                outermost = place;
            }
        }
    }

    /// <summary>Widths and curvatures at every multiple of a step, and at the tail.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above 0, or gives more than a million rows.</exception>
    public IReadOnlyList<OutlineRow> Table(double stepMm = 10)
    {
        Guard.Positive(stepMm);
        if (BodyLengthMm / stepMm > 1e6)
        {
            throw new ArgumentOutOfRangeException(nameof(stepMm), stepMm, "Too many rows.");
        }

        List<OutlineRow> rows = [];
        for (int i = 0; i * stepMm < BodyLengthMm - Chain.JoinToleranceMm; i++)
        {
            rows.Add(RowAt(i * stepMm));
        }

        rows.Add(RowAt(BodyLengthMm));
        return rows;
    }

    /// <summary>Whether a place (u, y) of the body frame lies within the outline.</summary>
    public bool Contains(Point place)
    {
        double y = Math.Abs(place.Y);
        return Half.CrossingsAtX(place.X).Count(crossing => crossing.Position.Y > y) % 2 == 1;
    }

    private OutlineRow RowAt(double uMm) =>
        AtStation(uMm) is { } place ? Row(place) with { UMm = uMm } : new(uMm, 0, 0);

    private static OutlineRow Row(ChainPoint place) =>
        new(place.Position.X, 2 * place.Position.Y, -place.Curve.Curvature);
}
