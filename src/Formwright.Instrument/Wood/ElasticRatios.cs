namespace Formwright.Instrument.Wood;

/// <summary>Elastic constants of a wood relative to its modulus along the grain (L along, R across the rings, T along the rings), and Poisson's ratios.</summary>
/// <param name="TL">E_T / E_L.</param>
/// <param name="RL">E_R / E_L.</param>
/// <param name="ShearLR">G_LR / E_L.</param>
/// <param name="ShearLT">G_LT / E_L.</param>
/// <param name="PoissonLR">ν_LR: strain across the rings per strain along the grain under a pull along the grain.</param>
/// <param name="PoissonLT">ν_LT.</param>
public readonly record struct ElasticRatios(
    double TL,
    double RL,
    double ShearLR,
    double ShearLT,
    double PoissonLR,
    double PoissonLT
);
