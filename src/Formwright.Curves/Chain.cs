using System.Collections.Immutable;

namespace Formwright.Curves;

/// <summary>
/// A row of Euler-spiral segments, each starting where the one before ends: the one representation of an outline or any other fair curve.
/// Positions, tangents and curvatures are exact functions of the arc length.
/// </summary>
public sealed partial class Chain : ICurve
{
    /// <summary>Ends may be this far apart where segments meet, mm: rounding, not geometry.</summary>
    public const double JoinToleranceMm = 1e-6;

    private readonly EulerSegment[] segments;
    private readonly double[] starts;

    /// <param name="segments">In order; each starts where the one before ends.</param>
    /// <param name="isClosed">The last one ends where the first starts.</param>
    /// <exception cref="ArgumentException">There is none, or a gap is wider than <see cref="JoinToleranceMm"/>.</exception>
    public Chain(IEnumerable<EulerSegment> segments, bool isClosed = false)
    {
        ArgumentNullException.ThrowIfNull(segments);
        this.segments = [.. segments];
        IsClosed = isClosed;
        if (this.segments.Length == 0)
        {
            throw new ArgumentException("A chain needs a segment.", nameof(segments));
        }

        starts = new double[this.segments.Length + 1];
        for (int i = 0; i < this.segments.Length; i++)
        {
            starts[i + 1] = starts[i] + this.segments[i].LengthMm;
        }

        for (int i = isClosed ? 0 : 1; i < this.segments.Length; i++)
        {
            EulerSegment before = this.segments[i > 0 ? i - 1 : ^1];
            double gap = before.PositionAt(before.LengthMm).DistanceTo(this.segments[i].Start);
            if (gap > JoinToleranceMm)
            {
                throw new ArgumentException(
                    $"Segment {i} starts {gap} mm from the end of the one before.",
                    nameof(segments)
                );
            }
        }
    }

    /// <summary>The segments in order.</summary>
    public ImmutableArray<EulerSegment> Segments =>
        System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(segments);

    public bool IsClosed { get; }

    public double LengthMm => starts[^1];

    public CurvePoint Start => segments[0].At(0);

    public CurvePoint End => segments[^1].End;

    /// <summary>Angle by which the tangent turns within the segments, rad, left positive.</summary>
    public double TurningRad => segments.Sum(segment => segment.EndAngle - segment.StartAngle);

    int ICurve.SpanCount => segments.Length;

    /// <summary>Arc length at which a segment starts, mm; the count of segments gives the whole length.</summary>
    public double StartOf(int segment) => starts[segment];

    /// <summary>The chain at an arc length from its start; a closed chain may be run around more than once.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside an open chain by more than <see cref="JoinToleranceMm"/>.</exception>
    public CurvePoint At(double arcLengthMm)
    {
        (int segment, double s) = Locate(arcLengthMm);
        return segments[segment].At(s);
    }

    /// <summary>The chain at many arc lengths; ascending ones need no search.</summary>
    /// <param name="arcLengthsMm">Arc lengths from the start, mm.</param>
    /// <param name="into">As many places.</param>
    /// <exception cref="ArgumentException"><paramref name="into"/> is shorter, or an arc length is outside an open chain.</exception>
    public void Sample(ReadOnlySpan<double> arcLengthsMm, Span<CurvePoint> into)
    {
        if (into.Length < arcLengthsMm.Length)
        {
            throw new ArgumentException("There is not room for all places.", nameof(into));
        }

        int segment = 0;
        for (int i = 0; i < arcLengthsMm.Length; i++)
        {
            double s = arcLengthsMm[i];
            if (!(s >= starts[segment] && s <= starts[segment + 1]))
            {
                bool isNext =
                    segment + 2 < starts.Length
                    && s > starts[segment + 1]
                    && s <= starts[segment + 2];
                segment = isNext ? segment + 1 : Locate(s).Segment;
                s = isNext ? s : starts[segment] + Locate(s).S;
            }

            into[i] = segments[segment].At(s - starts[segment]);
        }
    }

    double ICurve.SpanEnd(int span) => segments[span].LengthMm;

    CurvePoint ICurve.At(int span, double t) => segments[span].At(t);

    double ICurve.SpanLengthMm(int span, double from, double to) => to - from;

    /// <summary>The segment that holds an arc length, and the arc length within it.</summary>
    internal (int Segment, double S) Locate(double arcLengthMm)
    {
        Guard.Finite(arcLengthMm);
        double s = arcLengthMm;
        if (s < 0 || s > LengthMm)
        {
            if (IsClosed)
            {
                s -= LengthMm * Math.Floor(s / LengthMm);
            }
            else if (s < -JoinToleranceMm || s > LengthMm + JoinToleranceMm)
            {
                throw new ArgumentOutOfRangeException(
                    nameof(arcLengthMm),
                    arcLengthMm,
                    $"The chain runs from 0 to {LengthMm} mm."
                );
            }
        }

        int found = Array.BinarySearch(starts, s);
        int segment = Math.Clamp(found >= 0 ? found : ~found - 1, 0, segments.Length - 1);
        return (segment, s - starts[segment]);
    }
}
