using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>A figure of the lowest and of the highest string.</summary>
public sealed record SidedFigure(
    [property: Description("Lowest string.")] double Bass,
    [property: Description("Highest string.")] double Treble
);
