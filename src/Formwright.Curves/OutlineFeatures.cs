namespace Formwright.Curves;

/// <summary>What a maker says of an outline; <see cref="MinimumVariation"/> makes the fair curve of it.</summary>
/// <remarks>
/// Body frame: u along the centreline from the heel (0) to the tail (<paramref name="BodyLengthMm"/>). A flat is a straight
/// piece across the centreline; the curve leaves its end with the tangent across and, to be curvature continuous, straight (κ = 0).
/// A flat and a radius at the same end contradict each other.
/// </remarks>
public sealed record OutlineFeatures(
    double BodyLengthMm,
    OutlineStation UpperBout,
    OutlineStation Waist,
    OutlineStation LowerBout
)
{
    /// <summary>Full width of a flat at the heel, mm; 0 for none.</summary>
    public double HeelFlatMm { get; init; }

    /// <summary>Full width of a flat at the tail, mm; 0 for none.</summary>
    public double TailFlatMm { get; init; }

    /// <summary>Radius on the centreline at the heel, mm; null leaves it to the fair curve.</summary>
    public double? HeelRadiusMm { get; init; }

    /// <summary>Radius on the centreline at the tail, mm; null leaves it to the fair curve.</summary>
    public double? TailRadiusMm { get; init; }
}
