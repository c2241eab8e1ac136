using Formwright.Design;

namespace Formwright.Instrument.Action;

/// <summary>What a board, a fingerboard and a bridge can give.</summary>
/// <param name="RampMm">Least and greatest ramp, mm.</param>
/// <param name="DomeMm">Least and greatest height of the dome, mm.</param>
/// <param name="FingerboardMm">Least and greatest thickness, mm.</param>
/// <param name="SaddleMm">Least and greatest height at the saddle, mm.</param>
/// <param name="ActionMm">Least and greatest action, mm.</param>
public sealed record SolveLimits(
    (double Least, double Most) RampMm,
    (double Least, double Most) DomeMm,
    (double Least, double Most) FingerboardMm,
    (double Least, double Most) SaddleMm,
    (double Least, double Most) ActionMm
)
{
    /// <summary>Board left under the ramp at the nut, mm (tuned: it must still hold a clamp).</summary>
    public const double LeastUnderRampMm = 10;

    /// <summary>Board left under the relief, mm (tuned).</summary>
    public const double LeastUnderReliefMm = 6;

    /// <summary>Thinnest fingerboard, mm (common practice: the frets' tangs need wood).</summary>
    public const double LeastFingerboardMm = 3;

    /// <summary>Thickest fingerboard, mm (tuned).</summary>
    public const double MostFingerboardMm = 12;

    /// <summary>The limits of a design.</summary>
    public static SolveLimits Of(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        double board = design.Workboard.ThicknessMm;
        return new(
            (0, Math.Clamp(board - LeastUnderRampMm, 0, 15)),
            (0, Math.Clamp(board - LeastUnderReliefMm - design.Workboard.ClearanceMm, 0, 20)),
            (LeastFingerboardMm, MostFingerboardMm),
            (design.Saddle.LeastMm, design.Saddle.MostMm),
            (0.5, 12)
        );
    }
}
