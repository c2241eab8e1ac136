using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[mould.fasteners]</c>: what locates the halves and what pulls them to the board. Counts are for one half.</summary>
/// <param name="DowelDiameterMm">Diameter of the locating dowels, mm.</param>
/// <param name="Dowels">Locating dowels in each half.</param>
/// <param name="BoltDiameterMm">Nominal diameter of the bolts, mm (M8 is 8).</param>
/// <param name="Bolts">Bolts in each half.</param>
/// <param name="NutDiameterMm">Diameter of the hole for the captive nut, mm; an input, no standard was found.</param>
public sealed record FastenersDesign(
    double DowelDiameterMm,
    int Dowels,
    double BoltDiameterMm,
    int Bolts,
    double NutDiameterMm
)
{
    internal static FastenersDesign Read(TableReader table) =>
        new(
            table.Length("dowel_diameter", 8, 3, 20),
            table.Whole("dowels", 2, 2, 12),
            table.Length("bolt_diameter", 8, 3, 16),
            table.Whole("bolts", 3, 1, 20),
            table.Length("nut_diameter", 11, 3, 30)
        );
}
