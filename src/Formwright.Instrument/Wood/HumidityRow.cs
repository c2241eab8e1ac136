namespace Formwright.Instrument.Wood;

/// <summary>One line of the shop's humidity sheet.</summary>
/// <param name="HumidityPercent">Relative humidity, %.</param>
/// <param name="MoisturePercent">Moisture content at which wood rests, %.</param>
/// <param name="SoundboardMm">Change of the soundboard's widest width against the shop, mm.</param>
/// <param name="BackMm">Change of the back's widest width against the shop, mm.</param>
/// <param name="FingerboardMm">Change of the fingerboard's width at the join, mm.</param>
public readonly record struct HumidityRow(
    double HumidityPercent,
    double MoisturePercent,
    double SoundboardMm,
    double BackMm,
    double FingerboardMm
);
