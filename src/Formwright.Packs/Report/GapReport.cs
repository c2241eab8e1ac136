using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>A gap under the straight edge.</summary>
public sealed record GapReport(
    [property: Description("Key of the place: nut, fret5, bar1, deepest.")] string Place,
    [property: Description("From the nut, mm.")] double XMm,
    [property: Description("Gap, mm.")] double GapMm,
    [property: Description("How far it may be off, mm; 0 where the straight edge rests.")]
        double ToleranceMm
);
