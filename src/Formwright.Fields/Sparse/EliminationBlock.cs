namespace Formwright.Fields.Sparse;

/// <summary>Unknowns that are eliminated together, in the new numbering, and the block that takes over what remains.</summary>
/// <param name="Start">First of them.</param>
/// <param name="Count">How many; may be 0 where a part falls into unconnected ones.</param>
/// <param name="Parent">The block that is eliminated later and holds or passes on all unknowns that these still touch; -1 for the last.</param>
public readonly record struct EliminationBlock(int Start, int Count, int Parent);
