using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[mould.fasteners]</c>: what locates the halves and what pulls them to the board. Counts are for one half.</summary>
/// <param name="DowelDiameterMm">Diameter of the locating dowels, mm.</param>
/// <param name="Dowels">Locating dowels in each half.</param>
/// <param name="BoltDiameterMm">Nominal diameter of the bolts, mm (M8 is 8).</param>
/// <param name="Bolts">Bolts in each half.</param>
/// <param name="NutDiameterMm">Diameter of the hole for the captive nut, mm; an input, no standard was found.</param>
/// <param name="NutLengthMm">Length of the captive nut along the bolt, mm; it is let in flush with the top.</param>
/// <param name="DowelClearanceMm">Play of a dowel in its hole, across, mm.</param>
/// <param name="HeadRecessMm">How deep the bolts' heads are let into the underside of the board, mm.</param>
public sealed record FastenersDesign(
    double DowelDiameterMm,
    int Dowels,
    double BoltDiameterMm,
    int Bolts,
    double NutDiameterMm,
    double NutLengthMm,
    double DowelClearanceMm,
    double HeadRecessMm
)
{
    internal static FastenersDesign Read(TableReader table) =>
        new(
            table.Length("dowel_diameter", 8, 3, 20),
            table.Whole("dowels", 2, 2, 12),
            table.Length("bolt_diameter", 8, 3, 16),
            table.Whole("bolts", 3, 1, 20),
            table.Length("nut_diameter", 11, 3, 30),
            table.Length("nut_length", 12, 3, 40),
            table.Length("dowel_clearance", 0.05, 0, 1),
            table.Length("head_recess", 4, 0, 30)
        );
}
