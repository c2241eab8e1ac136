using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock;

/// <summary>One part of the cut list.</summary>
/// <param name="Number">Its number, as on the nesting sheets.</param>
/// <param name="Part">The part.</param>
/// <param name="LengthMm">Longer side of the box around it in its own frame, mm.</param>
/// <param name="WidthMm">Shorter side, mm.</param>
/// <param name="Sheets">Sheets that it lies on, one for each piece; fewer than its quantity where it found no place.</param>
public sealed record CutListRow(
    int Number,
    Part Part,
    double LengthMm,
    double WidthMm,
    IReadOnlyList<int> Sheets
);
