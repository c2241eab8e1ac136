using Formwright.Findings;

namespace Formwright.Instrument.Body;

/// <summary>Rules about the dome and its rim.</summary>
public static class DomeRules
{
    public static readonly Rule NoRoom = new(
        "dome.no-room",
        Severity.Stop,
        "mm",
        InstrumentWords.Of
    );

    public static readonly Rule RimNarrowerThanLinings = new(
        "dome.rim-narrower-than-linings",
        Severity.Warn,
        "mm",
        InstrumentWords.Of
    );
}
