using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>What the commands about traces print as JSON.</summary>
public sealed record TraceDocument(
    [property: Description("A trace that was made fair; absent where outlines were compared.")]
        TraceReport? Trace,
    [property: Description("Two outlines that were compared; absent otherwise.")]
        CompareReport? Compare
);
