using Formwright.Findings;

namespace Formwright.Instrument.Wood;

/// <summary>Rules about the wood, its tests and the air.</summary>
public static class WoodRules
{
    public static readonly Rule OutOfRange = Of("wood.moisture-out-of-range", Severity.Note, "%");
    public static readonly Rule GluedTooDamp = Of("wood.glued-too-damp", Severity.Warn, "%");
    public static readonly Rule TestsDiffer = Of("wood.tests-differ", Severity.Warn, "%");
    public static readonly Rule TapNotFitted = Of("wood.tap-not-fitted", Severity.Warn, "Hz");
    public static readonly Rule ShortSpan = Of("wood.short-span", Severity.Note, "");
    public static readonly Rule FromMemory = Of("wood.from-memory", Severity.Note, "");
    public static readonly Rule OddDensity = Of("wood.odd-density", Severity.Warn, "kg/m³");

    private static Rule Of(string code, Severity severity, string unit) =>
        new(code, severity, unit, InstrumentWords.Of);
}
