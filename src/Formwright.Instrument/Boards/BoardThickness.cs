using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Boards;

/// <summary>
/// How thick this board must be to reach a target: stiffness grows with the cube of the thickness (plate, D = E h³/12(1 - ν²)), mass with
/// the thickness itself. One thickness can't meet all targets at once; that is the maker's choice.
/// </summary>
/// <param name="TargetLongNm">Wanted bending stiffness along the grain, N·m (per m of width times m).</param>
/// <param name="TargetCrossNm">Wanted bending stiffness across the grain, N·m.</param>
/// <param name="TargetMassG">Wanted mass of the soundboard, g.</param>
/// <param name="ForLongMm">Thickness that meets the stiffness along, mm.</param>
/// <param name="ForCrossMm">Thickness that meets the stiffness across, mm.</param>
/// <param name="ForBothMm">Thickness that meets the geometric mean of both, mm.</param>
/// <param name="ForMassMm">Thickness that meets the mass, mm.</param>
public sealed record BoardThickness(
    double TargetLongNm,
    double TargetCrossNm,
    double TargetMassG,
    double ForLongMm,
    double ForCrossMm,
    double ForBothMm,
    double ForMassMm
)
{
    /// <summary>Thicknesses for some targets.</summary>
    /// <param name="board">The wood at hand.</param>
    /// <param name="areaMm2">Area of the soundboard without its hole, mm².</param>
    /// <param name="targetLongNm">Stiffness along, N·m.</param>
    /// <param name="targetCrossNm">Stiffness across, N·m.</param>
    /// <param name="targetMassG">Mass, g.</param>
    public static BoardThickness For(
        Timber board,
        double areaMm2,
        double targetLongNm,
        double targetCrossNm,
        double targetMassG
    )
    {
        ArgumentNullException.ThrowIfNull(board);
        double along = Math.Cbrt(Guard.Positive(targetLongNm) * 1000 / board.PlateLongNmm(1));
        double across = Math.Cbrt(Guard.Positive(targetCrossNm) * 1000 / board.PlateAcrossNmm(1));
        return new BoardThickness(
            targetLongNm,
            targetCrossNm,
            targetMassG,
            along,
            across,
            Math.Sqrt(along * across),
            Guard.Positive(targetMassG) / MassG(board.DensityKgPerM3, Guard.Positive(areaMm2), 1)
        );
    }

    /// <summary>Mass of a plate, g.</summary>
    public static double MassG(double densityKgPerM3, double areaMm2, double thicknessMm) =>
        densityKgPerM3 * areaMm2 * thicknessMm * 1e-6;
}
