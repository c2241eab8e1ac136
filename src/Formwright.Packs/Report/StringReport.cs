using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>One string.</summary>
public sealed record StringReport(
    [property: Description("Number that players use, 1 the treble-most.")] int Number,
    [property: Description("Open frequency, Hz.")] double FrequencyHz,
    [property: Description("Tension at pitch, N.")] double TensionN,
    [property: Description("Diameter, mm.")] double DiameterMm,
    [property: Description("Mass of a metre, g.")] double UnitMassGPerM,
    [property: Description("Compensated place of the nut towards the saddle, mm.")] double NutMm,
    [property: Description("Compensated place of the saddle from the nut, mm.")] double SaddleMm
);
