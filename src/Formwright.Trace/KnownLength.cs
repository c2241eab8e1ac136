namespace Formwright.Trace;

/// <summary>A length that the maker knows and that sets the scale of a trace.</summary>
/// <param name="What">Which length it is.</param>
/// <param name="LengthMm">The length, mm.</param>
public sealed record KnownLength(KnownLengthKind What, double LengthMm);
