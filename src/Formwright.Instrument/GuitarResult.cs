using Formwright.Findings;

namespace Formwright.Instrument;

/// <summary>What came of computing an instrument.</summary>
/// <param name="Guitar">The instrument, null where a finding of severity stop says that it can't be.</param>
/// <param name="Findings">What to see to.</param>
public sealed record GuitarResult(Guitar? Guitar, IReadOnlyList<Finding> Findings);
