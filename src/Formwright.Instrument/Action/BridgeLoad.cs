namespace Formwright.Instrument.Action;

/// <summary>How the strings load the bridge: a couple and a pull in the plane of the soundboard, and no push down of the break angle's kind.</summary>
/// <param name="PullN">ΣT, towards the nut, N.</param>
/// <param name="CoupleNmm">ΣT (s + t/2) about the middle of the soundboard, top towards the nut, N·mm.</param>
public sealed record BridgeLoad(double PullN, double CoupleNmm);
