using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One string's heights.</summary>
public sealed record StringHeightsReport(
    [property: Description("Number that players use, 1 the treble-most.")] int Number,
    [property: Description("Underside over the soundboard at the saddle, mm.")]
        double SaddleHeightMm,
    [property: Description("Underside over each fret, entry 0 the nut, mm.")]
        IReadOnlyList<double> ActionMm,
    [property: Description(
        "Least gap to the frets beyond, fretted at each fret, entry 0 open, mm."
    )]
        IReadOnlyList<double> GapMm,
    [property: Description("Angle by which it turns over the saddle, degrees.")]
        double BreakAngleDeg
);
