using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Joining;

namespace Formwright.Trace.Aligning;

/// <summary>Lays a trace on the centreline and cuts it into its sides.</summary>
internal sealed class Aligner(string file, TraceOptions options)
{
    /// <summary>An open curve whose ends are this share of its size apart is one half (tuned).</summary>
    private const double HalfShare = 0.7;

    /// <summary>A straight edge of this share of the size is the centreline of a half template (tuned).</summary>
    private const double EdgeShare = 0.6;

    /// <summary>A half may end this share of its size away from a given centreline.</summary>
    private const double EndShare = 0.02;

    /// <summary>The sides of one curve.</summary>
    /// <exception cref="TraceFault">It is open, crosses itself, or does not reach across the centreline.</exception>
    internal AlignedTrace Of(Trail trail, TraceLayout layout)
    {
        if (trail.Points.Length < 4)
        {
            throw Fault(trail, "fault.few-points", trail.Points.Length);
        }

        if (SelfCrossing.Of(trail.Points, trail.IsClosed) is { } place)
        {
            throw Fault(trail, "fault.crosses-itself", place.X, place.Y);
        }

        if (layout == TraceLayout.HalfWidths)
        {
            return Table(trail);
        }

        if (trail.IsClosed)
        {
            return StraightEdge(trail) is { } edge ? HalfTemplate(trail, edge) : Whole(trail);
        }

        double apart = trail.Points[0].DistanceTo(trail.Points[^1]);
        return apart >= HalfShare * trail.DiagonalMm
            ? Half(trail.Points, trail, options.Centreline, CentrelineSource.Ends)
            : throw Fault(
                trail,
                "fault.open",
                apart,
                trail.Points[0].X,
                trail.Points[0].Y,
                trail.Points[^1].X,
                trail.Points[^1].Y
            );
    }

    /// <summary>Both sides of a table with two columns of half widths.</summary>
    internal AlignedTrace OfBoth(Trail bass, Trail treble)
    {
        AlignedTrace one = Table(treble);
        AlignedTrace other = Table(bass.Under(Geometry.Affine.Scale(1, -1)));
        return options.IsSeenFromBehind
            ? one with
            {
                Treble = other.Treble,
                Bass = one.Treble,
            }
            : one with
            {
                Bass = other.Treble,
            };
    }

    /// <summary>Rows of stations and half widths: the first is the heel, the last the tail; a width there is a flat.</summary>
    private AlignedTrace Table(Trail trail)
    {
        Point[] rows = trail.Points;
        double heel = rows[0].X;
        List<Point> points = [.. Flat(rows[0].Y, 0)];
        points.AddRange(rows.Select(row => new Point(row.X - heel, row.Y)));
        points.AddRange(Flat(rows[^1].Y, rows[^1].X - heel).Reverse());
        bool isTail = options.Heel is HeelSide.Right or HeelSide.Bottom;
        if (isTail || (options.Heel == HeelSide.Auto && IsWiderAtStart(points)))
        {
            double length = rows[^1].X - heel;
            points = [.. points.AsEnumerable().Reverse().Select(p => p with { X = length - p.X })];
        }

        TraceAlignment alignment = new(
            new Point(heel, 0),
            0,
            CentrelineSource.Table,
            0,
            0,
            options.IsSeenFromBehind
        );
        return new AlignedTrace([.. points], null, alignment);
    }

    private static IEnumerable<Point> Flat(double halfWidth, double u)
    {
        for (int i = 0; i < Math.Min(halfWidth, 500); i++)
        {
            yield return new Point(u, i);
        }
    }

    private AlignedTrace Whole(Trail trail)
    {
        Point on;
        double angle;
        double residual = 0;
        CentrelineSource source = CentrelineSource.Given;
        if (options.Centreline is { } given)
        {
            (on, angle) = (given.From, (given.To - given.From).Angle);
        }
        else
        {
            (on, angle, residual) = SymmetryAxis.Of(trail.Points);
            source = CentrelineSource.Symmetry;
        }

        angle = FromHeel(trail.Points, on, angle);
        Point[] turned = Frame(trail.Points, on, angle, out Geometry.Affine map);
        (int heel, int tail) = Crossings(turned, trail);
        Point[] one = Cut(turned, heel, tail);
        Point[] other = [.. Cut(turned, tail, heel).Reverse()];
        if (one.Sum(point => point.Y) < 0)
        {
            (one, other) = (other, one);
        }

        double u = Math.Min(one[0].X, other[0].X);
        Point[] treble = [.. one.Select(p => new Point(p.X - u, p.Y))];
        Point[] bass = [.. other.Select(p => new Point(p.X - u, -p.Y))];
        TraceAlignment alignment = new(
            on + (Vector.At(angle) * u),
            angle,
            source,
            residual,
            residual,
            options.IsSeenFromBehind
        );
        return new AlignedTrace(treble, bass, alignment);
    }

    private AlignedTrace HalfTemplate(Trail trail, int edge)
    {
        // The edge leads to the point 'edge'; the curve starts there and ends at the point before.
        int n = trail.Points.Length;
        Point[] half = [.. Enumerable.Range(0, n).Select(i => trail.Points[(edge + i) % n])];
        return Half(half, trail, options.Centreline, CentrelineSource.StraightEdge);
    }

    private AlignedTrace Half(
        Point[] points,
        Trail trail,
        Centreline? given,
        CentrelineSource source
    )
    {
        Point on = points[0];
        double angle = (points[^1] - points[0]).Angle;
        if (given is { } line)
        {
            (on, angle, source) = (line.From, (line.To - line.From).Angle, CentrelineSource.Given);
        }

        angle = FromHeel(points, on, angle);
        Point[] turned = Frame(points, on, angle, out _);
        if (turned[0].X > turned[^1].X)
        {
            Array.Reverse(turned);
        }

        double off = Math.Max(Math.Abs(turned[0].Y), Math.Abs(turned[^1].Y));
        if (off > EndShare * trail.DiagonalMm)
        {
            throw Fault(trail, "fault.half-off", off);
        }

        double u = turned[0].X;
        bool isTreble = turned.Sum(point => point.Y) > 0;
        Point[] side = [.. turned.Select(p => new Point(p.X - u, isTreble ? p.Y : -p.Y))];
        TraceAlignment alignment = new(
            on + (Vector.At(angle) * u),
            angle,
            source,
            0,
            0,
            options.IsSeenFromBehind
        );
        return new AlignedTrace(isTreble ? side : null, isTreble ? null : side, alignment);
    }

    /// <summary>Points as (u, y): u along the axis, y to the left of it, which is the treble side as seen from the front.</summary>
    private Point[] Frame(Point[] points, Point on, double angle, out Geometry.Affine map)
    {
        map = Geometry
            .Affine.Scale(1, options.IsSeenFromBehind ? -1 : 1)
            .After(Geometry.Affine.Turn(-angle))
            .After(Geometry.Affine.Move(-on.X, -on.Y));
        Geometry.Affine toBody = map;
        return [.. points.Select(toBody.Of)];
    }

    /// <summary>The axis from heel to tail: the heel is where the maker says, else at the narrower end.</summary>
    private double FromHeel(Point[] points, Point on, double angle)
    {
        Vector along = Vector.At(angle);
        bool isReversed = options.Heel switch
        {
            HeelSide.Top => along.Y > 0,
            HeelSide.Bottom => along.Y < 0,
            HeelSide.Left => along.X < 0,
            HeelSide.Right => along.X > 0,
            _ => IsWiderAtStart([.. points.Select(p => AbsFrame(p - on, along))]),
        };
        return isReversed ? angle + Math.PI : angle;
    }

    private static Point AbsFrame(Vector from, Vector along) =>
        new(from.Dot(along), Math.Abs(from.Dot(along.Left)));

    private static bool IsWiderAtStart(IReadOnlyList<Point> points)
    {
        double low = points.Min(p => p.X);
        double high = points.Max(p => p.X);
        double middle = 0.5 * (low + high);
        double first = points.Where(p => p.X <= middle).Max(p => p.Y);
        double second = points.Where(p => p.X >= middle).Max(p => p.Y);
        return first > second * (1 + 1e-6);
    }

    /// <summary>Indices of the points that first lie across the centreline, at the heel and at the tail.</summary>
    private (int Heel, int Tail) Crossings(Point[] turned, Trail trail)
    {
        int heel = -1;
        int tail = -1;
        for (int i = 0; i < turned.Length; i++)
        {
            Point before = turned[i > 0 ? i - 1 : ^1];
            if (before.Y >= 0 != turned[i].Y >= 0)
            {
                heel = heel < 0 || turned[i].X < turned[heel].X ? i : heel;
                tail = tail < 0 || turned[i].X > turned[tail].X ? i : tail;
            }
        }

        double size = turned.Max(p => p.X) - turned.Min(p => p.X);
        return heel < 0 || turned[tail].X - turned[heel].X < 0.3 * size
            ? throw Fault(trail, "fault.no-crossing")
            : (heel, tail);
    }

    private static Point[] Cut(Point[] closed, int from, int to)
    {
        int count = ((to - from + closed.Length) % closed.Length);
        return
        [
            .. Enumerable
                .Range(0, Math.Max(1, count))
                .Select(i => closed[(from + i) % closed.Length]),
        ];
    }

    /// <summary>The end point of the straight edge of a half template; null for a whole outline.</summary>
    private static int? StraightEdge(Trail trail)
    {
        int best = -1;
        double longest = EdgeShare * trail.DiagonalMm;
        for (int i = 0; i < trail.Points.Length; i++)
        {
            double chord = trail.Points[i].DistanceTo(trail.Points[i > 0 ? i - 1 : ^1]);
            if (trail.IsStraight[i] && chord > longest)
            {
                (best, longest) = (i, chord);
            }
        }

        return best < 0 ? null : best;
    }

    private TraceFault Fault(Trail trail, string key, params object?[] values) =>
        new(file, trail.Line, trail.Column, key, values);
}
