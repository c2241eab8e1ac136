namespace Formwright.Curves;

/// <summary>
/// A piece of an Euler spiral (clothoid): the curvature is linear in the arc length, κ(s) = κ₀ + κ's. With κ' = 0 it is an arc, with
/// κ₀ = κ' = 0 a straight line.
/// </summary>
/// <remarks>
/// Position, tangent and curvature at an arc length are exact to a few units in the last place; see <see cref="EulerIntegral"/> for
/// method and source. The product of largest curvature and length is limited to 1e5 rad.
/// </remarks>
public readonly record struct EulerSegment
{
    /// <param name="start">Where it starts, mm.</param>
    /// <param name="startAngle">Angle of the tangent there, rad.</param>
    /// <param name="startCurvature">κ₀, 1/mm, left positive.</param>
    /// <param name="curvatureRate">κ' = dκ/ds, 1/mm².</param>
    /// <param name="lengthMm">Arc length, mm, 0 or more.</param>
    /// <exception cref="ArgumentException">Something is not finite, the length is negative, or it turns too far.</exception>
    public EulerSegment(
        Point start,
        double startAngle,
        double startCurvature,
        double curvatureRate,
        double lengthMm
    )
    {
        Start = Guard.Finite(start);
        StartAngle = Guard.Finite(startAngle);
        StartCurvature = Guard.Finite(startCurvature);
        CurvatureRate = Guard.Finite(curvatureRate);
        LengthMm = Guard.Finite(lengthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(lengthMm);
        double bend = lengthMm * Math.Max(Math.Abs(startCurvature), Math.Abs(EndCurvature));
        if (!(bend <= EulerIntegral.LargestTurning))
        {
            throw new ArgumentOutOfRangeException(nameof(lengthMm), bend, "It turns too far.");
        }
    }

    public Point Start { get; }

    public double StartAngle { get; }

    /// <summary>κ at the start, 1/mm.</summary>
    public double StartCurvature { get; }

    /// <summary>dκ/ds, 1/mm².</summary>
    public double CurvatureRate { get; }

    public double LengthMm { get; }

    /// <summary>κ at the end, 1/mm.</summary>
    public double EndCurvature => StartCurvature + (CurvatureRate * LengthMm);

    public double EndAngle => AngleAt(LengthMm);

    public CurvePoint End => At(LengthMm);

    /// <summary>Straight from one place to another.</summary>
    public static EulerSegment Line(Point from, Point to) =>
        new(from, (to - from).Angle, 0, 0, from.DistanceTo(to));

    /// <summary>κ at arc length <paramref name="s"/>, 1/mm.</summary>
    public double CurvatureAt(double s) => StartCurvature + (CurvatureRate * s);

    /// <summary>Tangent angle at arc length <paramref name="s"/>, rad, not wrapped.</summary>
    public double AngleAt(double s) =>
        StartAngle + (s * (StartCurvature + (0.5 * CurvatureRate * s)));

    /// <summary>Position at arc length <paramref name="s"/>, mm; the spiral may be followed a little beyond its ends.</summary>
    public Point PositionAt(double s) =>
        Start + EulerIntegral.Displacement(StartAngle, StartCurvature, CurvatureRate, s);

    /// <summary>Position, tangent and curvature at arc length <paramref name="s"/>.</summary>
    public CurvePoint At(double s) => new(PositionAt(s), AngleAt(s), CurvatureAt(s));

    /// <summary>The piece between two arc lengths of this one.</summary>
    public EulerSegment Part(double fromMm, double toMm) =>
        new(PositionAt(fromMm), AngleAt(fromMm), CurvatureAt(fromMm), CurvatureRate, toMm - fromMm);

    /// <summary>The same curve run from its end to its start.</summary>
    public EulerSegment Reversed() =>
        new(PositionAt(LengthMm), EndAngle + Math.PI, -EndCurvature, CurvatureRate, LengthMm);

    /// <summary>Mirrored in the x axis (the centreline).</summary>
    public EulerSegment Mirrored() =>
        new(new(Start.X, -Start.Y), -StartAngle, -StartCurvature, -CurvatureRate, LengthMm);

    public EulerSegment Moved(Vector step) =>
        new(Start + step, StartAngle, StartCurvature, CurvatureRate, LengthMm);

    /// <summary>Turned about a place by an angle, rad, left positive.</summary>
    public EulerSegment Rotated(double angle, Point about) =>
        new(
            about + (Start - about).Turned(angle),
            StartAngle + angle,
            StartCurvature,
            CurvatureRate,
            LengthMm
        );

    /// <summary>Scaled about the origin by a factor above 0.</summary>
    public EulerSegment Scaled(double factor)
    {
        Guard.Positive(factor);
        return new(
            new(Start.X * factor, Start.Y * factor),
            StartAngle,
            StartCurvature / factor,
            CurvatureRate / (factor * factor),
            LengthMm * factor
        );
    }
}
