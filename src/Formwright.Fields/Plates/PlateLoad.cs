using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A load spread evenly over a spot of a plate.</summary>
/// <param name="Spot">Where.</param>
/// <param name="ForceN">Total force out of the plate (+z), N.</param>
/// <param name="CoupleNmm">
/// Total couple as what does work on the slopes (dz/dx, dz/dy), N·mm: a positive X lifts the side of greater x. It is the couple of a
/// pull in -x at a height above the plate.
/// </param>
/// <param name="PullN">Total force within the plate, N.</param>
public sealed record PlateLoad(
    PlateSpot Spot,
    double ForceN,
    Vector CoupleNmm = default,
    Vector PullN = default
)
{
    /// <summary>
    /// The strings on a bridge: they pull it towards the nut (-x) at their height over the soundboard, so on the middle of the plate they
    /// are the pull T and the couple T (s + t/2). The down-force from the break over the saddle is balanced within the bridge.
    /// </summary>
    /// <param name="bridge">The bridge's place on the plate.</param>
    /// <param name="tensionN">Sum of the tensions, N.</param>
    /// <param name="heightMm">Height of the strings over the soundboard's outer face at the saddle, mm.</param>
    /// <param name="thicknessMm">Thickness of the soundboard there, mm.</param>
    public static PlateLoad Strings(
        PlateSpot bridge,
        double tensionN,
        double heightMm,
        double thicknessMm
    )
    {
        Guard.NotNegative(tensionN);
        Guard.NotNegative(heightMm);
        Guard.Positive(thicknessMm);
        return new(
            bridge,
            0,
            new Vector(tensionN * (heightMm + (thicknessMm / 2)), 0),
            new Vector(-tensionN, 0)
        );
    }
}
