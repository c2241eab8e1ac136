namespace Formwright.Instrument.Tolerances;

/// <summary>What one input costs.</summary>
/// <param name="Input">The input.</param>
/// <param name="Sensitivity">Change of the output per unit of the input, c = ∂f/∂x.</param>
/// <param name="Uncertainty">|c| u, in the output's unit.</param>
/// <param name="PlusMinus">|c| a: what the whole half width of the input does to the output.</param>
/// <param name="Share">Part of the variance, 0 to 1.</param>
public sealed record Contribution(
    UncertainInput Input,
    double Sensitivity,
    double Uncertainty,
    double PlusMinus,
    double Share
);
