using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>Half widths of both sides at a station.</summary>
public sealed record SideDifferenceReport(
    [property: Description("Station from the heel, mm.")] double UMm,
    [property: Description("Half width of the bass side, mm.")] double BassMm,
    [property: Description("Half width of the treble side, mm.")] double TrebleMm,
    [property: Description("By how much the treble side is wider, mm.")] double TrebleOverBassMm
);
