using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[nut]</c>: the nut as a piece.</summary>
/// <param name="ThicknessMm">Thickness along the strings, mm.</param>
/// <param name="SlotShare">How deep the strings lie in their slots, as a share of their diameter.</param>
/// <param name="SeatMm">How far it stands in the neck below the fingerboard's underside, mm.</param>
public sealed record NutDesign(double ThicknessMm, double SlotShare, double SeatMm)
{
    internal static NutDesign Read(TableReader table) =>
        new(
            table.Length("thickness", 5, 1, 15),
            table.Number("slot", 0.5, 0.1, 1.5, ""),
            table.Length("seat", 0, 0, 5)
        );
}
