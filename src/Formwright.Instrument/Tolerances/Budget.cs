namespace Formwright.Instrument.Tolerances;

/// <summary>The uncertainty of one output by the law of propagation, and its worst case.</summary>
/// <param name="Value">The output at the inputs' values.</param>
/// <param name="CombinedUncertainty">u_c, first order.</param>
/// <param name="SecondOrderUncertainty">u_c with the next terms (JCGM 100, 5.1.2 note), or null where they were not asked for.</param>
/// <param name="WorstCase">Σ|c| a: every input at the worst end at once. Never less than the root of the sum of squares.</param>
/// <param name="Contributions">In the order of the inputs.</param>
public sealed record Budget(
    double Value,
    double CombinedUncertainty,
    double? SecondOrderUncertainty,
    double WorstCase,
    IReadOnlyList<Contribution> Contributions
)
{
    /// <summary>The inputs that matter, the costliest first.</summary>
    public IReadOnlyList<Contribution> Ranked { get; } =
    [
        .. Contributions
            .Where(each => each.Uncertainty > 0)
            .OrderByDescending(each => each.Uncertainty)
            .ThenBy(each => each.Input.Name, StringComparer.Ordinal),
    ];
}
