using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[climate]</c>: the air in which the instrument is glued, and the air in which it will live.</summary>
/// <param name="TemperatureC">Temperature of shop and home, °C.</param>
/// <param name="ShopPercent">Relative humidity of the shop when plates, bars and braces are glued, %.</param>
/// <param name="DryPercent">Driest air that the instrument is to stand, %.</param>
/// <param name="WetPercent">Dampest air that it is to stand, %.</param>
public sealed record ClimateDesign(
    double TemperatureC,
    double ShopPercent,
    double DryPercent,
    double WetPercent
)
{
    internal static ClimateDesign Read(TableReader table)
    {
        ClimateDesign climate = new(
            table.Number("temperature", 20, -10, 60, "°C"),
            table.Number("shop_humidity", 45, 5, 95, "%"),
            table.Number("dry_humidity", 35, 5, 95, "%"),
            table.Number("wet_humidity", 65, 5, 95, "%")
        );
        table.InOrder("dry_humidity", climate.DryPercent, "wet_humidity", climate.WetPercent);
        return climate;
    }
}
