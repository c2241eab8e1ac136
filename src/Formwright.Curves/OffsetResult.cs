namespace Formwright.Curves;

/// <summary>The offset of a chain.</summary>
/// <param name="Paths">Exact offset curves, trimmed; none when the offset eats the whole curve.</param>
/// <param name="Problems">What could not be done, and where; empty when all is well.</param>
public sealed record OffsetResult(
    IReadOnlyList<OffsetPath> Paths,
    IReadOnlyList<OffsetProblem> Problems
);
