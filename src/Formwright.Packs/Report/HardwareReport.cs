using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>Something that is bought ready made.</summary>
public sealed record HardwareReport(
    [property: Description("dowel, bolt, captive-nut, washer.")] string Kind,
    [property: Description("Nominal diameter, mm.")] double DiameterMm,
    [property: Description("Length, mm; 0 where it has none.")] double LengthMm,
    [property: Description("How many.")] int Count,
    [property: Description("Price of one; absent where it is not known.")] double? Price
)
{
    internal static HardwareReport Of(HardwareRow row) =>
        new(
            Choices.NameOf(row.Item.Kind),
            row.Item.DiameterMm,
            row.Item.LengthMm,
            row.Item.Count,
            row.Price
        );
}
