using System.Collections.Immutable;

namespace Formwright.Fields.Sparse;

/// <summary>In which order the unknowns of a matrix are eliminated, as a tree of blocks; children come before their parent.</summary>
/// <param name="Unknowns">The unknown (old number) at each place of the new numbering.</param>
/// <param name="Blocks">The tree; unknowns of two blocks touch only if one is an ancestor of the other.</param>
public sealed record EliminationOrder(
    ImmutableArray<int> Unknowns,
    ImmutableArray<EliminationBlock> Blocks
);
