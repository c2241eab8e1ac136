using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A closed curve of the rim or of a hole, run so that the plate lies on its left, with its corners.</summary>
internal sealed class RimLoop
{
    // Tuned: an outline given as a fine row of straight pieces counts as smooth, the corner of a rectangle does not.
    private const double CornerRad = 0.25;
    private const int AreaSamples = 24;

    private readonly ICurve curve;
    private readonly double[] starts;
    private readonly bool reversed;

    /// <param name="curve">Closed.</param>
    /// <param name="isHole">The plate lies outside of it.</param>
    /// <exception cref="ArgumentException">It is not closed or encloses nothing.</exception>
    internal RimLoop(ICurve curve, bool isHole)
    {
        if (!curve.IsClosed || curve.SpanCount == 0)
        {
            throw new ArgumentException("A rim is a closed curve.", nameof(curve));
        }

        this.curve = curve;
        starts = new double[curve.SpanCount + 1];
        double area = 0;
        for (int span = 0; span < curve.SpanCount; span++)
        {
            double end = curve.SpanEnd(span);
            starts[span + 1] = starts[span] + curve.SpanLengthMm(span, 0, end);
            Point before = curve.At(span, 0).Position;
            for (int k = 1; k <= AreaSamples; k++)
            {
                Point next = curve.At(span, end * k / AreaSamples).Position;
                area += (before - Point.Origin).Cross(next - Point.Origin) / 2;
                before = next;
            }
        }

        if (!(Math.Abs(area) > 0))
        {
            throw new ArgumentException("The rim encloses no area.", nameof(curve));
        }

        reversed = area < 0 != isHole;
        IsHole = isHole;
        Corners = FindCorners();
    }

    internal bool IsHole { get; }

    internal double LengthMm => starts[^1];

    /// <summary>Arc lengths of the corners, ascending; empty for a smooth curve.</summary>
    internal double[] Corners { get; }

    /// <summary>The loop at an arc length. At a corner, <paramref name="ahead"/> chooses the tangent that leaves it.</summary>
    internal (Point Position, Vector Tangent) At(double s, bool ahead = true)
    {
        bool upward = ahead != reversed;
        double own = reversed ? LengthMm - s : s;
        // Close to a joint the asked side decides, not rounding.
        double nudge = (upward ? 1e-9 : -1e-9) * LengthMm;
        double turns = LengthMm * Math.Floor((own + nudge) / LengthMm);
        int found = Array.BinarySearch(starts, own + nudge - turns);
        int span = Math.Min(found < 0 ? ~found - 1 : found, curve.SpanCount - 1);
        double share = (own - turns - starts[span]) / (starts[span + 1] - starts[span]);
        share = Math.Clamp(share, 0, 1);
        CurvePoint point = curve.At(span, share * curve.SpanEnd(span));
        return (point.Position, reversed ? -point.Tangent : point.Tangent);
    }

    /// <summary>Angle through which the loop turns between two arc lengths, without sign, rad.</summary>
    internal double TurningRad(double from, double to)
    {
        const int steps = 64;
        double turning = 0;
        Vector before = At(from).Tangent;
        for (int k = 1; k <= steps; k++)
        {
            Vector next = At(from + ((to - from) * k / steps), ahead: k < steps).Tangent;
            turning += Math.Abs(Math.Atan2(before.Cross(next), before.Dot(next)));
            before = next;
        }

        return turning;
    }

    private double[] FindCorners()
    {
        var corners = new List<double>();
        for (int span = 0; span < curve.SpanCount; span++)
        {
            int previous = (span + curve.SpanCount - 1) % curve.SpanCount;
            Vector arrives = curve.At(previous, curve.SpanEnd(previous)).Tangent;
            Vector leaves = curve.At(span, 0).Tangent;
            if (Math.Abs(Math.Atan2(arrives.Cross(leaves), arrives.Dot(leaves))) > CornerRad)
            {
                corners.Add(reversed ? LengthMm - starts[span] : starts[span]);
            }
        }

        corners = [.. corners.Select(s => s >= LengthMm ? s - LengthMm : s)];
        corners.Sort();
        return [.. corners];
    }
}
