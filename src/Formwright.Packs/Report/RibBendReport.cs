using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One bend of a rib.</summary>
public sealed record RibBendReport(
    [property: Description("Where it starts, from the tail, mm.")] double FromMm,
    [property: Description("Where it ends, mm.")] double ToMm,
    [property: Description("Whether it bends the other way: the waist.")] bool IsWaist,
    [property: Description("Smallest radius at mid-thickness, mm.")] double TightestMm,
    [property: Description("Stretch of the outer fibre there, t/2R, %.")] double StrainPercent,
    [property: Description("Thickness that keeps to the species' limit, mm.")]
        double ThicknessThatBendsMm
);
