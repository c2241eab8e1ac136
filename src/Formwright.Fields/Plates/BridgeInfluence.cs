namespace Formwright.Fields.Plates;

/// <summary>How a bridge answers unit loads on it: multiply by the load and add up (the plate is linear).</summary>
/// <param name="PerForceN">Movement per newton out of the plate.</param>
/// <param name="PerCoupleNmm">Movement per N·mm of couple about the axis across the plate, positive as by the strings.</param>
/// <param name="PerPullN">Movement per newton of pull towards the nut (-x) in the middle of the plate.</param>
public sealed record BridgeInfluence(
    PlateMotion PerForceN,
    PlateMotion PerCoupleNmm,
    PlateMotion PerPullN
)
{
    /// <summary>The bridge under strings of a tension at a height, see <see cref="PlateLoad.Strings"/>.</summary>
    public PlateMotion Under(double tensionN, double heightMm, double thicknessMm)
    {
        double couple = tensionN * (heightMm + (thicknessMm / 2));
        return new(
            (couple * PerCoupleNmm.RiseMm) + (tensionN * PerPullN.RiseMm),
            (PerCoupleNmm.SlopeRad * couple) + (PerPullN.SlopeRad * tensionN),
            (PerCoupleNmm.ShiftMm * couple) + (PerPullN.ShiftMm * tensionN)
        );
    }
}
