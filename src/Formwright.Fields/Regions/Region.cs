using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// A bounded part of a plane, given by closed loops of points: one outer loop and its holes, or several parts.
/// What lies inside an odd number of loops belongs to it, so the direction and the start of a loop do not matter.
/// </summary>
/// <remarks>
/// A curved edge comes in as a fine polyline; <see cref="SagittaMm"/> states how far that polyline may leave the curve.
/// Immutable; safe to use from several threads.
/// </remarks>
public sealed class Region
{
    /// <summary>Coordinates beyond this are taken for a mistake of the caller, mm.</summary>
    public const double LargestCoordinateMm = 1e6;

    private Region(IReadOnlyList<IReadOnlyList<Point>> loops, EdgeBands edges, double sagittaMm)
    {
        Loops = loops;
        Edges = edges;
        SagittaMm = sagittaMm;
        Bounds = Box.Empty;
        foreach (IReadOnlyList<Point> loop in loops)
        {
            foreach (Point place in loop)
            {
                Bounds = Bounds.With(place);
            }
            AreaMm2 += LoopRules.SignedArea(loop);
            PerimeterMm += LoopRules.Length(loop);
        }
    }

    /// <summary>The loops without a repeated last point, outer ones counter-clockwise, holes clockwise.</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Loops { get; }

    /// <summary>Smallest upright rectangle around the region.</summary>
    public Box Bounds { get; }

    public double AreaMm2 { get; }

    /// <summary>Length of the whole edge, holes too, mm.</summary>
    public double PerimeterMm { get; }

    /// <summary>How far the loops may lie from the curve that they stand for, mm, as the caller stated it.</summary>
    public double SagittaMm { get; }

    internal EdgeBands Edges { get; }

    /// <summary>The region inside one loop.</summary>
    /// <inheritdoc cref="OfLoops(IReadOnlyList{IReadOnlyList{Point}}, double)"/>
    public static Region Of(IReadOnlyList<Point> loop, double sagittaMm = 0) =>
        OfLoops([loop ?? throw new ArgumentNullException(nameof(loop))], sagittaMm);

    /// <summary>The region inside an odd number of the loops.</summary>
    /// <param name="loops">Closed loops in mm; a first point repeated at the end is dropped, so are points that repeat the one before.</param>
    /// <param name="sagittaMm">How far the loops may lie from the true curve, mm.</param>
    /// <exception cref="ArgumentException">
    /// A loop is not finite, has no area, or touches or crosses itself or another; the message says where.
    /// </exception>
    public static Region OfLoops(IReadOnlyList<IReadOnlyList<Point>> loops, double sagittaMm = 0)
    {
        ArgumentNullException.ThrowIfNull(loops);
        if (!double.IsFinite(sagittaMm) || sagittaMm < 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(sagittaMm),
                sagittaMm,
                "A sagitta is 0 or more."
            );
        }
        if (loops.Count == 0)
        {
            throw new ArgumentException("A region needs at least one loop.", nameof(loops));
        }
        Point[][] clean = [.. loops.Select((loop, i) => LoopRules.Cleaned(loop, i))];
        var edges = new EdgeBands(clean);
        if (edges.FirstCrossing() is Point place)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"The region's edge touches or crosses itself near ({place.X:0.###}, {place.Y:0.###})."
                ),
                nameof(loops)
            );
        }
        LoopRules.Orient(clean);
        return new Region(clean, edges, sagittaMm);
    }

    /// <summary>Whether a place lies inside. On the edge itself the answer is either, by rounding.</summary>
    public bool Contains(Point place) => Edges.Contains(place.X, place.Y);

    /// <summary>The part of the region at and beyond a straight line across, x ≥ <paramref name="xMm"/>.</summary>
    /// <exception cref="ArgumentException">Nothing of the region lies there.</exception>
    public Region BeyondX(double xMm)
    {
        if (!double.IsFinite(xMm))
        {
            throw new ArgumentOutOfRangeException(nameof(xMm), xMm, "A finite number is needed.");
        }
        return xMm <= Bounds.Min.X ? this : OfLoops(StraightCut.BeyondX(Loops, xMm), SagittaMm);
    }
}
