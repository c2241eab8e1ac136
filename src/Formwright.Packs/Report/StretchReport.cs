using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>A stretch of one side of a trace.</summary>
public sealed record StretchReport(
    [property: Description("bass or treble.")] string Side,
    [property: Description("Where it begins, from the heel along the centreline, mm.")]
        double FromUMm,
    [property: Description("Where it ends, mm.")] double ToUMm
);
