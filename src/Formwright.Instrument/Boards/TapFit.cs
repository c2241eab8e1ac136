using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Boards;

/// <summary>The moduli of a rectangular board from its tap notes.</summary>
/// <param name="ModulusLongMPa">E along the grain, MPa.</param>
/// <param name="ModulusCrossMPa">E across the grain, MPa.</param>
/// <param name="ShearMPa">Shear modulus, MPa.</param>
/// <param name="Iterations">Rounds of the fit.</param>
/// <param name="Converged">The plate with these moduli gives the notes to 1e-8.</param>
public sealed record TapFit(
    double ModulusLongMPa,
    double ModulusCrossMPa,
    double ShearMPa,
    int Iterations,
    bool Converged
)
{
    private const int MaxIterations = 60;

    /// <summary>
    /// Finds the moduli with which a free plate of this size and mass (<see cref="FreePlate"/>) sounds the given notes: each modulus is
    /// scaled by the square of measured over computed note until all agree. A note that was not measured leaves its modulus at the
    /// species' ratio to the modulus along the grain.
    /// </summary>
    /// <param name="lengthMm">Length along the grain, mm.</param>
    /// <param name="widthMm">Width, mm.</param>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="massG">Mass, g.</param>
    /// <param name="longHz">Note of bending along the grain, Hz, or null.</param>
    /// <param name="crossHz">Note of bending across the grain, Hz, or null.</param>
    /// <param name="twistHz">Note of twisting, Hz, or null.</param>
    /// <param name="species">Start of the fit, ratios of what was not measured, Poisson's ratio.</param>
    public static TapFit Of(
        double lengthMm,
        double widthMm,
        double thicknessMm,
        double massG,
        double? longHz,
        double? crossHz,
        double? twistHz,
        Timber species
    )
    {
        ArgumentNullException.ThrowIfNull(species);
        double perArea =
            Guard.Positive(massG)
            / 1000
            / (Guard.Positive(lengthMm) * Guard.Positive(widthMm) * 1e-6);
        Guard.Positive(thicknessMm);
        Timber wood = species;
        for (int i = 1; i <= MaxIterations; i++)
        {
            FreePlate plate = new(
                lengthMm,
                widthMm,
                wood.PlateLongNmm(thicknessMm),
                wood.PlateAcrossNmm(thicknessMm),
                wood.PoissonLong * wood.PlateAcrossNmm(thicknessMm),
                wood.PlateTwistNmm(thicknessMm),
                perArea
            );
            (FreePlateMode first, FreePlateMode second, FreePlateMode third) = plate.TapModes();
            double along = Factor(longHz, first);
            double cross = Factor(crossHz, second);
            double twist = Factor(twistHz, third);
            double given = new[] { along, cross, twist }.FirstOrDefault(double.IsFinite, 1);
            along = double.IsNaN(along) ? given : along;
            wood = wood with
            {
                ModulusLongMPa = wood.ModulusLongMPa * along,
                ModulusAcrossMPa = wood.ModulusAcrossMPa * (double.IsNaN(cross) ? along : cross),
                ShearMPa = wood.ShearMPa * (double.IsNaN(twist) ? along : twist),
            };
            double off = new[] { along, cross, twist }.Max(x =>
                double.IsNaN(x) ? 0 : Math.Abs(x - 1)
            );
            if (off < 1e-8 || !double.IsFinite(wood.ModulusLongMPa))
            {
                return Result(wood, i, off < 1e-8);
            }
        }

        return Result(wood, MaxIterations, false);
    }

    // What a modulus must be scaled by; NaN for a note that was not measured.
    private static double Factor(double? measuredHz, FreePlateMode computed) =>
        measuredHz is { } note
            ? Math.Pow(Guard.Positive(note) / computed.FrequencyHz, 2)
            : double.NaN;

    private static TapFit Result(Timber wood, int iterations, bool converged) =>
        new(wood.ModulusLongMPa, wood.ModulusAcrossMPa, wood.ShearMPa, iterations, converged);
}
