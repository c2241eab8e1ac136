namespace Formwright.Fields;

/// <summary>
/// What an independent look at a membrane found. All figures but the last two are shares of the largest u or of the area:
/// 0 is perfect.
/// </summary>
/// <param name="MeanValue">Largest miss of the mean-value property: over a circle of radius r, u is on average r²/4 lower than in its middle.</param>
/// <param name="Flux">Miss of the balance -∮∂u/∂n ds = area.</param>
/// <param name="Edge">Largest |u| on the edge.</param>
/// <param name="Negative">How far u falls below 0 inside.</param>
/// <param name="Mirror">Largest difference between the two sides; null for a region that is not symmetric on the x axis.</param>
/// <param name="AboveFloor">Smallest u over d²/4 of a disc of radius d that fits round the place; 1 or more is right (maximum principle).</param>
/// <param name="BelowCeiling">Largest u over area/4π, which a disc reaches; 1 or less is right (Talenti 1976).</param>
public sealed record MembraneCheck(
    double MeanValue,
    double Flux,
    double Edge,
    double Negative,
    double? Mirror,
    double AboveFloor,
    double BelowCeiling
)
{
    /// <summary>Whether every figure holds within a share.</summary>
    public bool HoldsWithin(double share) =>
        MeanValue <= share
        && Flux <= share
        && Edge <= share
        && Negative <= share
        && !(Mirror > share)
        && AboveFloor >= 1 - share
        && BelowCeiling <= 1 + share;
}
