namespace Formwright.Jigs.Brackets;

/// <summary>Which slots hold all ribs.</summary>
/// <param name="Slots">The slots chosen, from heel to tail; empty where none do.</param>
/// <param name="LowerBound">No slots anywhere could be fewer: the rib that needs most contacts needs that many.</param>
/// <param name="IsWhole">Every smaller number was searched to the end.</param>
public sealed record CoverAnswer(IReadOnlyList<int> Slots, int LowerBound, bool IsWhole);
