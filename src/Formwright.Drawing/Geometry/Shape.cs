using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>An open or closed path of lines, arcs and cubic Béziers.</summary>
/// <remarks>A closed path runs on from its last end to its start by a straight line, which has no length when they meet.</remarks>
public sealed record Shape
{
    /// <param name="start">First point.</param>
    /// <param name="segments">The pieces in order.</param>
    /// <param name="closed">Whether the path returns to its start.</param>
    /// <exception cref="ArgumentException">A coordinate or bulge is not a finite number.</exception>
    public Shape(Point start, IReadOnlyList<Segment> segments, bool closed = false)
    {
        ArgumentNullException.ThrowIfNull(segments);
        Start = start;
        Segments = segments;
        Closed = closed;
        if (!start.IsFinite)
        {
            throw new ArgumentException("The start is not a finite point.", nameof(start));
        }

        for (int i = 0; i < segments.Count; i++)
        {
            bool finite =
                segments[i].End.IsFinite
                && segments[i] switch
                {
                    ArcSegment arc => double.IsFinite(arc.Bulge),
                    CubicSegment cubic => cubic.Control1.IsFinite && cubic.Control2.IsFinite,
                    _ => true,
                };
            if (!finite)
            {
                throw new ArgumentException($"Segment {i} is not finite.", nameof(segments));
            }
        }
    }

    public Point Start { get; }

    public IReadOnlyList<Segment> Segments { get; }

    public bool Closed { get; }

    public Point End => Segments.Count == 0 ? Start : Segments[^1].End;

    public static Shape Line(Point from, Point to) => new(from, [new LineSegment(to)]);

    /// <summary>Straight pieces through the points.</summary>
    /// <exception cref="ArgumentException">No point, or one that is not finite.</exception>
    public static Shape Polyline(IReadOnlyList<Point> points, bool closed = false)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count == 0)
        {
            throw new ArgumentException("A polyline needs a point.", nameof(points));
        }

        Segment[] segments = new Segment[points.Count - 1];
        for (int i = 0; i < segments.Length; i++)
        {
            segments[i] = new LineSegment(points[i + 1]);
        }

        return new Shape(points[0], segments, closed);
    }

    /// <summary>The arcs of a converted curve.</summary>
    public static Shape Of(ArcPath arcs)
    {
        ArgumentNullException.ThrowIfNull(arcs);
        int count = arcs.Vertices.Count;
        List<Segment> segments = new(count);
        for (int i = 0; i < (arcs.IsClosed ? count : count - 1); i++)
        {
            Point end = arcs.Vertices[(i + 1) % count].Position;
            double bulge = arcs.Vertices[i].Bulge;
            segments.Add(bulge == 0 ? new LineSegment(end) : new ArcSegment(end, bulge));
        }

        return new Shape(arcs.Vertices[0].Position, segments, arcs.IsClosed);
    }

    /// <summary>The Béziers of a converted curve.</summary>
    public static Shape Of(BezierPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return new Shape(
            path.Pieces[0].P0,
            [.. path.Pieces.Select(p => new CubicSegment(p.P1, p.P2, p.P3))],
            path.IsClosed
        );
    }

    public static Shape Of(Polyline line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Polyline(line.Points, line.IsClosed);
    }

    public static Shape Rectangle(Box box) =>
        Polyline(
            [box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y)],
            closed: true
        );

    /// <summary>A full circle as two half circles, counter-clockwise from its right.</summary>
    public static Shape Circle(Point centre, double radiusMm)
    {
        if (!(radiusMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(radiusMm), "A circle needs a radius.");
        }

        Point right = new(centre.X + radiusMm, centre.Y);
        Point left = new(centre.X - radiusMm, centre.Y);
        return new Shape(right, [new ArcSegment(left, 1), new ArcSegment(right, 1)], closed: true);
    }

    /// <summary>An arc from angle <paramref name="fromRad"/> through <paramref name="sweepRad"/> (left positive, below a full turn).</summary>
    public static Shape Arc(Point centre, double radiusMm, double fromRad, double sweepRad)
    {
        Point At(double angle) =>
            new(centre.X + (radiusMm * Math.Cos(angle)), centre.Y + (radiusMm * Math.Sin(angle)));
        return new Shape(
            At(fromRad),
            [new ArcSegment(At(fromRad + sweepRad), Math.Tan(sweepRad / 4))]
        );
    }

    /// <summary>The path as the placement draws it. Arcs become cubics where the axes have separate scales.</summary>
    public Shape Placed(Placement placement)
    {
        bool similar = placement.IsSimilarity;
        double turn = placement.Determinant < 0 ? -1 : 1;
        List<Segment> segments = new(Segments.Count);
        Point at = Start;
        foreach (Segment segment in Segments)
        {
            switch (segment)
            {
                case ArcSegment arc when similar:
                    segments.Add(new ArcSegment(placement.Apply(arc.End), turn * arc.Bulge));
                    break;
                case ArcSegment arc:
                    foreach (CubicSegment c in ArcGeometry.Of(at, arc).Cubics())
                    {
                        segments.Add(
                            new CubicSegment(
                                placement.Apply(c.Control1),
                                placement.Apply(c.Control2),
                                placement.Apply(c.End)
                            )
                        );
                    }

                    break;
                case CubicSegment c:
                    segments.Add(
                        new CubicSegment(
                            placement.Apply(c.Control1),
                            placement.Apply(c.Control2),
                            placement.Apply(c.End)
                        )
                    );
                    break;
                default:
                    segments.Add(new LineSegment(placement.Apply(segment.End)));
                    break;
            }

            at = segment.End;
        }

        return new Shape(placement.Apply(Start), segments, Closed);
    }

    /// <summary>Points along the path no further than <paramref name="toleranceMm"/> from it (each chord's sagitta).</summary>
    public IReadOnlyList<Point> Flatten(double toleranceMm)
    {
        if (!(toleranceMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(toleranceMm));
        }

        List<Point> points = [Start];
        Point at = Start;
        foreach (Segment segment in Segments)
        {
            switch (segment)
            {
                case ArcSegment arc:
                    ArcGeometry.Of(at, arc).Flatten(toleranceMm, points);
                    break;
                case CubicSegment cubic:
                    Flattening.Cubic(at, cubic, toleranceMm, points);
                    break;
                default:
                    points.Add(segment.End);
                    break;
            }

            at = segment.End;
        }

        return points;
    }

    /// <summary>The smallest upright box around the shape.</summary>
    public Box Bounds() => ShapeBounds.Of(this);
}
