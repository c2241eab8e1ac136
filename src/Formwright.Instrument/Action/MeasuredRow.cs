namespace Formwright.Instrument.Action;

/// <summary>One height that the bench measured, beside what was computed without it.</summary>
/// <param name="Key">Its key in <c>[measured]</c>.</param>
/// <param name="ComputedMm">What the chain gave before this measurement, mm.</param>
/// <param name="MeasuredMm">What was found, mm.</param>
/// <param name="ExpectedMm">How far off it could be by the tolerances (worst case), ± mm.</param>
public sealed record MeasuredRow(
    string Key,
    double ComputedMm,
    double MeasuredMm,
    double ExpectedMm
)
{
    /// <summary>Measured less computed, mm.</summary>
    public double DifferenceMm => MeasuredMm - ComputedMm;
}
