using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One fret.</summary>
public sealed record FretReport(
    [property: Description("Its number; 0 is the nut.")] int Fret,
    [property: Description("From the nut, mm.")] double FromNutMm
);
