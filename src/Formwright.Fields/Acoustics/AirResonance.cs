namespace Formwright.Fields.Acoustics;

/// <summary>
/// The air of the box ringing through the soundhole (Helmholtz's resonator), and how it shifts the soundboard's first mode and is shifted
/// by it. Back and ribs are taken as rigid, the air's pressure as the same everywhere in the box: good for the two lowest resonances.
/// </summary>
public static class AirResonance
{
    /// <summary>Speed of sound in air of 20 °C, m/s.</summary>
    public const double SpeedMps = 343;

    /// <summary>Density of air of 20 °C at sea level, kg/m³.</summary>
    public const double DensityKgM3 = 1.204;

    // Derived: each open end of a wide-flanged pipe moves with 8/(3π) = 0.85 of its radius of air more.
    private const double EndsPerRadius = 1.7;

    /// <summary>f = (c/2π) √(S/(V L)), L = t + 1.7 r (both ends flanged).</summary>
    /// <param name="soundholeRadiusMm">Radius of the soundhole, or of the circle of equal area, mm.</param>
    /// <param name="thicknessMm">Thickness of the soundboard at the soundhole, mm.</param>
    /// <param name="volumeLitres">Volume of the air in the box, L.</param>
    /// <param name="speedMps">Speed of sound, m/s.</param>
    public static double HelmholtzHz(
        double soundholeRadiusMm,
        double thicknessMm,
        double volumeLitres,
        double speedMps = SpeedMps
    )
    {
        Positive(soundholeRadiusMm, nameof(soundholeRadiusMm));
        Positive(thicknessMm, nameof(thicknessMm));
        Positive(volumeLitres, nameof(volumeLitres));
        Positive(speedMps, nameof(speedMps));
        double radius = soundholeRadiusMm / 1000;
        double length = (thicknessMm / 1000) + (EndsPerRadius * radius);
        double area = Math.PI * radius * radius;
        return speedMps / (2 * Math.PI) * Math.Sqrt(area / (volumeLitres / 1000 * length));
    }

    /// <summary>
    /// Frequency of a soundboard mode over a closed box (soundhole stopped): the air is a spring ρc²A²/V more, where A is the area that the
    /// mode sweeps (Christensen &amp; Vistisen, JASA 68, 1980).
    /// </summary>
    /// <param name="openHz">Frequency without air, Hz.</param>
    /// <param name="massKg">Modal mass, kg.</param>
    /// <param name="sweptMm2">Area swept per mm, of the same scale as the mass, mm².</param>
    /// <param name="volumeLitres">Volume of the air in the box, L.</param>
    /// <param name="speedMps">Speed of sound, m/s.</param>
    /// <param name="densityKgM3">Density of the air, kg/m³.</param>
    public static double ClosedHz(
        double openHz,
        double massKg,
        double sweptMm2,
        double volumeLitres,
        double speedMps = SpeedMps,
        double densityKgM3 = DensityKgM3
    )
    {
        Positive(openHz, nameof(openHz));
        Positive(massKg, nameof(massKg));
        Positive(volumeLitres, nameof(volumeLitres));
        Positive(speedMps, nameof(speedMps));
        Positive(densityKgM3, nameof(densityKgM3));
        double area = sweptMm2 / 1e6;
        double spring = densityKgM3 * speedMps * speedMps * area * area / (volumeLitres / 1000);
        double added = spring / massKg / (4 * Math.PI * Math.PI);
        return double.IsFinite(added)
            ? Math.Sqrt((openHz * openHz) + added)
            : throw new ArgumentOutOfRangeException(nameof(sweptMm2));
    }

    /// <summary>
    /// The two resonances of soundboard and air together: f₋² + f₊² = f_h² + f_p², f₋ f₊ = f_h f_v (Christensen &amp; Vistisen, JASA 68(3) 758,
    /// 1980).
    /// </summary>
    /// <param name="helmholtzHz">f_h, of the air under a rigid soundboard, Hz.</param>
    /// <param name="vacuumHz">f_v, of the soundboard without air, Hz.</param>
    /// <param name="closedHz">f_p, of the soundboard over the closed box, Hz; not below f_v.</param>
    /// <exception cref="ArgumentOutOfRangeException">A frequency is not positive, or f_p is below f_v.</exception>
    public static CoupledResonances Coupled(double helmholtzHz, double vacuumHz, double closedHz)
    {
        Positive(helmholtzHz, nameof(helmholtzHz));
        Positive(vacuumHz, nameof(vacuumHz));
        Positive(closedHz, nameof(closedHz));
        ArgumentOutOfRangeException.ThrowIfLessThan(closedHz, vacuumHz);
        // (f₊ ± f₋)² = sum ± 2 product: no difference of near numbers.
        double sum = (helmholtzHz * helmholtzHz) + (closedHz * closedHz);
        double product = helmholtzHz * vacuumHz;
        double total = Math.Sqrt(sum + (2 * product));
        double apart = Math.Sqrt(Math.Max(0, sum - (2 * product)));
        double high = (total + apart) / 2;
        return new(product / high, high);
    }

    private static void Positive(double value, string name)
    {
        if (!(double.IsFinite(value) && value > 0))
        {
            throw new ArgumentOutOfRangeException(
                name,
                value,
                "A finite number above 0 is needed."
            );
        }
    }
}
