namespace Formwright.Trace;

/// <summary>A place where the trace leaves the fair curve over a short length: what the maker sands or fills.</summary>
/// <param name="Side">Side of the instrument.</param>
/// <param name="UMm">Station along the centreline from the heel, mm.</param>
/// <param name="ArcMm">Arc length from the heel along the fair curve, mm.</param>
/// <param name="LengthMm">Length along the outline over which it stands away by a tenth of its height or more, mm.</param>
/// <param name="HeightMm">How far it stands away, mm, above 0.</param>
/// <param name="IsProud">It stands out (sand it); otherwise it is hollow (fill it, or move the line).</param>
/// <param name="TurnDeg">
/// How far it turns the edge, 4 × height / length, degrees: what the eye sees in a reflection and the finger feels. Bumps are listed in
/// this order (own choice).
/// </param>
/// <param name="Certainty">Its height in standard deviations of the noise over its length.</param>
public sealed record Bump(
    TraceSide Side,
    double UMm,
    double ArcMm,
    double LengthMm,
    double HeightMm,
    bool IsProud,
    double TurnDeg,
    double Certainty
);
