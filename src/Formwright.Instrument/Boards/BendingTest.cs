namespace Formwright.Instrument.Boards;

/// <summary>
/// Modulus of a rectangular strip that rests on two edges and is loaded in the middle: E = m g L³ / (4 b h³ δ)
/// (Euler-Bernoulli beam; shear adds 1.2 (E/G)(h/L)² to the deflection, under 1 % for spans of more than 45 thicknesses with E/G 16).
/// </summary>
public static class BendingTest
{
    /// <summary>Standard gravity, m/s² (exact by definition, CGPM 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>The modulus, MPa.</summary>
    /// <param name="spanMm">Distance of the rests L, mm.</param>
    /// <param name="loadG">Mass put on the middle, g.</param>
    /// <param name="deflectionMm">How far the middle went down, mm.</param>
    /// <param name="widthMm">Width b, square to the span, mm.</param>
    /// <param name="thicknessMm">Thickness h, mm.</param>
    public static double ModulusMPa(
        double spanMm,
        double loadG,
        double deflectionMm,
        double widthMm,
        double thicknessMm
    ) =>
        Guard.Positive(loadG)
        / 1000
        * Gravity
        * Math.Pow(Guard.Positive(spanMm), 3)
        / (
            4
            * Guard.Positive(widthMm)
            * Math.Pow(Guard.Positive(thicknessMm), 3)
            * Guard.Positive(deflectionMm)
        );
}
