namespace Formwright.Instrument.Wood;

/// <summary>
/// How wood swells and shrinks below fibre saturation (<i>Wood Handbook</i>, FPL-GTR-282, 2021, chapter 13): eq. 13-2, ΔD = D C ΔM,
/// meant for moisture contents of 6 to 14 %.
/// </summary>
public static class Movement
{
    /// <summary>Lower end of the range of eq. 13-2, %.</summary>
    public const double MinMoisturePercent = 6;

    /// <summary>Upper end of the range of eq. 13-2, %.</summary>
    public const double MaxMoisturePercent = 14;

    /// <summary>
    /// Movement along the grain, share per % of moisture: 0.15 % from green to oven-dry over 30 %, the middle of the 0.1 to 0.2 % that
    /// straight wood shows (from memory of the <i>Wood Handbook</i>, chapter 4; not confirmed).
    /// </summary>
    public const double AlongGrainPerPercent = 0.00005;

    /// <summary>Change of a dimension, same unit as it, growth positive (eq. 13-2).</summary>
    /// <param name="dimensionMm">Dimension at the first moisture content.</param>
    /// <param name="perPercent">Coefficient C, share per % of moisture.</param>
    /// <param name="fromPercent">Moisture content before, %.</param>
    /// <param name="toPercent">Moisture content after, %.</param>
    public static double ChangeMm(
        double dimensionMm,
        double perPercent,
        double fromPercent,
        double toPercent
    ) =>
        Guard.Finite(dimensionMm)
        * Guard.Finite(perPercent)
        * (Guard.Finite(toPercent) - Guard.Finite(fromPercent));

    /// <summary>
    /// The coefficient C from a shrinkage, for species without one in table 13-5: C = (S/F)/(1 - S(F - 10)/F), relative to the size at 10 %.
    /// </summary>
    /// <param name="shrinkage">Shrinkage S from green to oven-dry, as a share of the green size.</param>
    /// <param name="fibreSaturationPercent">F, %: 30, or 22 for western redcedar.</param>
    public static double CoefficientOf(double shrinkage, double fibreSaturationPercent)
    {
        double s = Guard.Between(shrinkage, 0, 0.5);
        double f = Guard.Between(fibreSaturationPercent, 15, 40);
        return s / f / (1 - (s * (f - 10) / f));
    }
}
