namespace Formwright.Instrument.Tolerances;

/// <summary>Sums over the builds of one stream, output by output, about the middle of the bins.</summary>
internal sealed record Moments(double[] Sum, double[] SumOfSquares);
