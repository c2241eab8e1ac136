using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[head]</c>: the head, its joint to the neck and its tuners. Three tuners a side, slots between.</summary>
/// <param name="AngleDeg">How far its face falls back from the neck's, degrees.</param>
/// <param name="Joint">How it is joined to the neck.</param>
/// <param name="LengthMm">Length from the nut along its face, mm.</param>
/// <param name="WidthNutMm">Width behind the nut, mm.</param>
/// <param name="WidthTipMm">Width at its end, mm.</param>
/// <param name="ThicknessMm">Thickness with the veneer, mm.</param>
/// <param name="VeneerMm">Thickness of the veneer on its face, mm.</param>
/// <param name="FirstPostMm">From the nut to the first tuner post along the face, mm.</param>
/// <param name="PostSpacingMm">From post to post, mm.</param>
/// <param name="PostHoleMm">Diameter of the holes for the rollers, mm.</param>
/// <param name="PostBelowFaceMm">Middle of the rollers below the face, mm.</param>
/// <param name="SlotWidthMm">Width of a slot, mm.</param>
/// <param name="BetweenSlotsMm">Wood between the slots, mm.</param>
public sealed record HeadDesign(
    double AngleDeg,
    HeadJoint Joint,
    double LengthMm,
    double WidthNutMm,
    double WidthTipMm,
    double ThicknessMm,
    double VeneerMm,
    double FirstPostMm,
    double PostSpacingMm,
    double PostHoleMm,
    double PostBelowFaceMm,
    double SlotWidthMm,
    double BetweenSlotsMm
)
{
    internal static HeadDesign Read(TableReader table) =>
        new(
            table.Number("angle", 15, 0, 30, "°"),
            table.Choice("joint", HeadJoint.Scarf),
            table.Length("length", 190, 60, 400),
            table.Length("width_nut", 64, 20, 150),
            table.Length("width_tip", 74, 20, 200),
            table.Length("thickness", 20, 8, 50),
            table.Length("veneer", 2, 0, 10),
            table.Length("first_post", 55, 10, 200),
            table.Length("post_spacing", 35, 10, 80),
            table.Length("post_hole", 10, 3, 20),
            table.Length("post_below_face", 10, 1, 40),
            table.Length("slot_width", 14.5, 5, 40),
            table.Length("between_slots", 20, 5, 80)
        );
}
