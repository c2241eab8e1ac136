namespace Formwright.Trace;

/// <summary>What a trace can tell: its noise, and the lowest bumps that stand out of it.</summary>
/// <param name="PointNoiseMm">Standard deviation of a traced point across the curve, mm.</param>
/// <param name="StationNoiseMm">Standard deviation of the mean of the points over one step of the curve, mm.</param>
/// <param name="StepMm">That step, mm.</param>
/// <param name="SmallestMm">The lowest bump that is told however quiet the trace is, mm.</param>
public sealed record NoiseFloor(
    double PointNoiseMm,
    double StationNoiseMm,
    double StepMm,
    double SmallestMm
)
{
    /// <summary>
    /// The lowest bump of a length that is told, mm: six standard deviations of the height that noise alone would feign (a raised cosine
    /// fitted to independent stations has the variance σ² / (3/8 · stations)).
    /// </summary>
    public double HeightMm(double lengthMm) =>
        Math.Max(
            SmallestMm,
            Fairing.BumpScan.Certainty
                * StationNoiseMm
                / Math.Sqrt(Math.Max(1, 0.375 * lengthMm / StepMm))
        );
}
