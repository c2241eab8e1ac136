using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[heel]</c>: the heel and what joins it to the box.</summary>
/// <param name="Method">Slots or dowels.</param>
/// <param name="LengthMm">How far the heel reaches from the join towards the nut under the neck, mm.</param>
/// <param name="FootMm">How far neck and inner block reach into the box past the join, mm; with dowels the neck ends at the join.</param>
/// <param name="WidthMm">Width of the block at the join, mm.</param>
/// <param name="CapWidthMm">Width of the heel at its cap, mm.</param>
/// <param name="CapMm">Thickness of the heel's cap, mm.</param>
/// <param name="LayerMm">Thickness of a piece of the heel's stack, mm.</param>
/// <param name="SlotDepthMm">Depth of a rib slot from the block's side, mm.</param>
/// <param name="WedgeThinMm">Thickness of the wedge at its thin end (soundboard side), mm; 0 and no taper for ribs that fit without.</param>
/// <param name="WedgeThickMm">Thickness at its thick end (back side), mm.</param>
/// <param name="Dowels">Number of dowels.</param>
/// <param name="DowelMm">Diameter of a dowel, mm.</param>
/// <param name="DowelLengthMm">Length of a dowel, mm.</param>
public sealed record HeelDesign(
    HeelMethod Method,
    double LengthMm,
    double FootMm,
    double WidthMm,
    double CapWidthMm,
    double CapMm,
    double LayerMm,
    double SlotDepthMm,
    double WedgeThinMm,
    double WedgeThickMm,
    int Dowels,
    double DowelMm,
    double DowelLengthMm
)
{
    internal static HeelDesign Read(TableReader table) =>
        new(
            table.Choice("method", HeelMethod.Slots),
            table.Length("length", 32, 5, 120),
            table.Length("foot", 42, 0, 150),
            table.Length("width", 64, 20, 150),
            table.Length("cap_width", 26, 5, 120),
            table.Length("cap", 3, 0, 20),
            table.Length("layer", 22, 5, 120),
            table.Length("slot_depth", 20, 3, 60),
            table.Length("wedge_thin", 1.5, 0, 10),
            table.Length("wedge_thick", 4, 0, 20),
            table.Whole("dowels", 3, 1, 8),
            table.Length("dowel", 10, 3, 20),
            table.Length("dowel_length", 50, 10, 120)
        );
}
