namespace Formwright.Instrument.Wood;

/// <summary>
/// Moisture content of wood at rest in air: the two-hydrate sorption equation of the <i>Wood Handbook</i> (USDA Forest Products
/// Laboratory, FPL-GTR-282, 2021, eq. 4-5), which meets its table 4-2 to 0.1 %. It is an average over species; the handbook
/// calls a precision of 0.1 % not meaningful, and wood that is still taking up or giving off water lies up to a few tenths to either side.
/// </summary>
public static class Moisture
{
    private const double MinC = -10;
    private const double MaxC = 130;

    /// <summary>Equilibrium moisture content, % of the oven-dry mass.</summary>
    /// <param name="temperatureC">Temperature, °C, -10 to 130.</param>
    /// <param name="humidityPercent">Relative humidity, %, 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static double Equilibrium(double temperatureC, double humidityPercent)
    {
        double t = Guard.Between(temperatureC, MinC, MaxC);
        double h = Guard.Between(humidityPercent, 0, 100) / 100;
        double w = 349 + (1.29 * t) + (0.0135 * t * t);
        double k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        double k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        double k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        double kh = k * h;
        double free = kh / (1 - kh);
        double bound =
            ((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh));
        return 1800 / w * (free + bound);
    }

    /// <summary>The relative humidity at which wood rests at a moisture content, %: the inverse of <see cref="Equilibrium"/>, which
    /// rises throughout, by halving 60 times (to rounding).</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="moisturePercent">Moisture content, %, from 0 to that at 100 % humidity.</param>
    public static double HumidityFor(double temperatureC, double moisturePercent)
    {
        Guard.Between(moisturePercent, 0, Equilibrium(temperatureC, 100));
        double low = 0;
        double high = 100;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) =
                Equilibrium(temperatureC, middle) < moisturePercent
                    ? (middle, high)
                    : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Density of wood at a moisture content, kg/m³ (<i>Wood Handbook</i>, eq. 4-13 and 4-14), below the fibre saturation of 30 %.</summary>
    /// <param name="basicSpecificGravity">Oven-dry mass over green volume, relative to water.</param>
    /// <param name="moisturePercent">Moisture content, %, 0 to 30.</param>
    public static double DensityKgPerM3(double basicSpecificGravity, double moisturePercent)
    {
        double basic = Guard.Between(basicSpecificGravity, 0.05, 1.5);
        double x = Guard.Between(moisturePercent, 0, 30);
        double gravity = basic / (1 - (0.265 * basic * (1 - (x / 30))));
        return 1000 * gravity * (1 + (x / 100));
    }
}
