namespace Formwright.Curves;

/// <summary>
/// A piece of an offset: the ends of the normals of one source segment between two of its arc lengths, or a round corner about a
/// corner of the source.
/// </summary>
/// <param name="Segment">Source segment; for a round corner, an arc of radius 0 about the corner.</param>
/// <param name="From">Arc length on the segment where the piece starts, mm; for a round corner, 0.</param>
/// <param name="To">Arc length where it ends, mm; for a round corner, the angle that it turns by, rad, with its sign.</param>
/// <param name="DistanceMm">Along the left normal, mm.</param>
/// <param name="IsCorner">A round corner.</param>
internal readonly record struct OffsetSpan(
    EulerSegment Segment,
    double From,
    double To,
    double DistanceMm,
    bool IsCorner
)
{
    internal double End => IsCorner ? Math.Abs(To) : To - From;

    /// <summary>Position, tangent and curvature κ/(1 - κd); <paramref name="t"/> from 0 to <see cref="End"/>.</summary>
    internal CurvePoint At(double t)
    {
        if (IsCorner)
        {
            double turned = Segment.StartAngle + (Math.Sign(To) * t);
            return new(
                Segment.Start + (Vector.At(turned).Left * DistanceMm),
                turned,
                -1 / DistanceMm
            );
        }

        CurvePoint source = Segment.At(From + t);
        return new(
            source.Position + (source.Normal * DistanceMm),
            source.Angle,
            source.Curvature / (1 - (source.Curvature * DistanceMm))
        );
    }

    /// <summary>Exact: the source's length less d times its turning.</summary>
    internal double LengthMm(double from, double to)
    {
        if (IsCorner)
        {
            return (to - from) * Math.Abs(DistanceMm);
        }

        double turning = Segment.AngleAt(From + to) - Segment.AngleAt(From + from);
        return to - from - (DistanceMm * turning);
    }

    /// <summary>The piece between two of its parameters.</summary>
    internal OffsetSpan Part(double from, double to)
    {
        if (!IsCorner)
        {
            return this with { From = From + from, To = From + to };
        }

        double start = Segment.StartAngle + (Math.Sign(To) * from);
        return this with
        {
            Segment = new(Segment.Start, start, 0, 0, 0),
            To = Math.Sign(To) * (to - from),
        };
    }
}
