namespace Formwright.Instrument.Tolerances;

/// <summary>What came of many builds.</summary>
/// <param name="Builds">How many.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="Outputs">Spread of each output.</param>
/// <param name="ChanceInBands">Share of builds in which every band was met at once; 1 where no band was asked for.</param>
public sealed record MonteCarloResult(
    long Builds,
    ulong Seed,
    IReadOnlyList<Spread> Outputs,
    double ChanceInBands
);
