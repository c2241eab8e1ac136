namespace Formwright.Instrument.Plates;

/// <summary>How the bridge moves under the strings, as the soundboard's plate says, with standard uncertainties (GUM).</summary>
/// <param name="RiseMm">Rise of the bridge's middle, mm.</param>
/// <param name="RotationRad">Rotation, its top towards the nut, rad.</param>
/// <param name="RiseUncertaintyMm">Standard uncertainty of the rise, mm.</param>
/// <param name="RotationUncertaintyRad">Standard uncertainty of the rotation, rad.</param>
/// <param name="PullN">Sum of the strings' tensions, N.</param>
/// <param name="CoupleNmm">Their couple about the middle of the soundboard, N·mm.</param>
/// <param name="HingedRotationRad">Rotation with the rim hinged, rad.</param>
/// <param name="ClampedRotationRad">Rotation with the rim clamped, rad.</param>
public sealed record BridgeMotion(
    double RiseMm,
    double RotationRad,
    double RiseUncertaintyMm,
    double RotationUncertaintyRad,
    double PullN,
    double CoupleNmm,
    double HingedRotationRad,
    double ClampedRotationRad
)
{
    /// <summary>Rotation, degrees.</summary>
    public double RotationDeg => RotationRad * 180 / Math.PI;

    /// <summary>Its standard uncertainty, degrees.</summary>
    public double RotationUncertaintyDeg => RotationUncertaintyRad * 180 / Math.PI;

    /// <summary>Rotation with the rim hinged, degrees.</summary>
    public double HingedRotationDeg => HingedRotationRad * 180 / Math.PI;

    /// <summary>Rotation with the rim clamped, degrees.</summary>
    public double ClampedRotationDeg => ClampedRotationRad * 180 / Math.PI;
}
