namespace Formwright.Instrument.Wood;

/// <summary>The air around the wood.</summary>
/// <param name="TemperatureC">Temperature, °C.</param>
/// <param name="HumidityPercent">Relative humidity, %.</param>
public readonly record struct Air(double TemperatureC, double HumidityPercent)
{
    /// <summary>Moisture content at which wood rests in this air, %.</summary>
    public double MoisturePercent => Moisture.Equilibrium(TemperatureC, HumidityPercent);
}
