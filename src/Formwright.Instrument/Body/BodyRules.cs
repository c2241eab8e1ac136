using Formwright.Findings;

namespace Formwright.Instrument.Body;

/// <summary>Rules about soundboard, back, ribs, blocks, bridge and neck blank.</summary>
public static class BodyRules
{
    public static readonly Rule RibStrain = Of("body.rib-strain", Severity.Warn, "%");
    public static readonly Rule LiningStrain = Of("body.lining-strain", Severity.Warn, "%");
    public static readonly Rule KerfsClose = Of("body.kerfs-close", Severity.Note, "mm");
    public static readonly Rule KerfThrough = Of("body.kerf-through", Severity.Stop, "mm");
    public static readonly Rule RibTooLow = Of("body.rib-too-low", Severity.Stop, "mm");
    public static readonly Rule BraceThroughSoundhole = Of(
        "body.brace-through-soundhole",
        Severity.Stop,
        "mm"
    );
    public static readonly Rule BarUnderBridge = Of("body.bar-under-bridge", Severity.Warn, "mm");
    public static readonly Rule BraceAtBridgeEnd = Of(
        "body.brace-at-bridge-end",
        Severity.Warn,
        "mm"
    );
    public static readonly Rule BraceOutside = Of("body.brace-outside", Severity.Stop, "mm");
    public static readonly Rule BraceThroughBar = Of("body.brace-through-bar", Severity.Warn, "mm");
    public static readonly Rule BarOverDome = Of("body.bar-over-dome", Severity.Note, "mm");
    public static readonly Rule RosetteTooDeep = Of("body.rosette-too-deep", Severity.Stop, "mm");
    public static readonly Rule RosetteAtHole = Of("body.rosette-at-hole", Severity.Stop, "mm");
    public static readonly Rule RosetteOutside = Of("body.rosette-outside", Severity.Warn, "mm");
    public static readonly Rule BackBarOutside = Of("body.back-bar-outside", Severity.Stop, "mm");
    public static readonly Rule BackBarTooHigh = Of("body.back-bar-too-high", Severity.Stop, "mm");
    public static readonly Rule BridgeOutside = Of("body.bridge-outside", Severity.Stop, "mm");
    public static readonly Rule SlotNearFront = Of(
        "body.saddle-slot-near-front",
        Severity.Warn,
        "mm"
    );
    public static readonly Rule SlotTooDeep = Of("body.saddle-slot-too-deep", Severity.Stop, "mm");
    public static readonly Rule MiddleTooShort = Of(
        "body.bridge-middle-too-short",
        Severity.Warn,
        "mm"
    );
    public static readonly Rule TieHoleLow = Of("body.tie-hole-low", Severity.Warn, "mm");
    public static readonly Rule DishBlend = Of("body.dish-blend", Severity.Warn, "mm");
    public static readonly Rule HeelThin = Of("body.heel-thin-between-slots", Severity.Warn, "mm");
    public static readonly Rule SlotPastCentre = Of(
        "body.heel-slot-past-centre",
        Severity.Stop,
        "mm"
    );
    public static readonly Rule WedgeUpsideDown = Of("body.wedge-upside-down", Severity.Stop, "mm");
    public static readonly Rule DowelEdge = Of("body.dowel-edge", Severity.Warn, "mm");
    public static readonly Rule DowelTooLong = Of("body.dowel-too-long", Severity.Stop, "mm");
    public static readonly Rule HeadTooShort = Of("body.head-too-short", Severity.Stop, "mm");
    public static readonly Rule HeadTooNarrow = Of("body.head-too-narrow", Severity.Stop, "mm");
    public static readonly Rule PostOutOfWood = Of("body.post-out-of-wood", Severity.Stop, "mm");

    private static Rule Of(string code, Severity severity, string unit) =>
        new(code, severity, unit, InstrumentWords.Of);
}
