using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>A range of the lowest and of the highest string: from, to.</summary>
public sealed record SidedInterval(
    [property: Description("Lowest string: from, to.")] IReadOnlyList<double> Bass,
    [property: Description("Highest string: from, to.")] IReadOnlyList<double> Treble
);
