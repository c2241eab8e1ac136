using System.ComponentModel;
using System.Text.Json.Serialization;
using Formwright.Design.Reading;
using Formwright.Jigs.Brackets;

namespace Formwright.Packs.Report;

/// <summary>How a bracket is set.</summary>
public sealed record JigSettingReport(
    [property: Description("Number of the slot, from 1 at the heel.")] int Slot,
    [property: Description("front or rear: the face that touches.")] string Face,
    [property: Description("tangent, or two-edges at the waist.")] string Contact,
    [property: Description("Station of the contact from the heel, mm.")] double StationMm,
    [property: Description("Place of the bolt along the slot, from its inner end, mm.")]
        double AlongSlotMm,
    [property: Description(
        "Turn of the bracket out of the slot's direction, positive where the face is turned towards the tail, degrees."
    )]
        double TurnDeg,
    [property: Description("From the bolt's centre to the face, at the foot, mm.")]
        double BoltToFaceMm,
    [property: Description("Bolt's centre from the line across the board, mm.")] double BoltXMm,
    [property:
        Description("Bolt's centre from the centreline, positive on the bass side, mm."),
        JsonPropertyName("bolt_y_b_mm")
    ]
        double BoltYBMm,
    [property: Description("Height over the board at which the face starts to touch, mm.")]
        double TouchesFromMm,
    [property: Description("Height at which it ends, mm.")] double TouchesToMm,
    [property: Description("Rib without a contact before this one, mm.")] double GapBeforeMm,
    [property: Description("Hollow behind the middle of the face, mm; 0 where it is tangent.")]
        double HollowMm,
    [property: Description("The same by the rule of thumb w²/8R, mm.")] double HollowEstimateMm
)
{
    internal static JigSettingReport Of(BracketSetting setting) =>
        new(
            setting.Slot,
            Choices.NameOf(setting.Contact.Face),
            Choices.NameOf(setting.Contact.Kind),
            setting.StationMm,
            setting.AlongSlotMm,
            setting.TurnRad * 180 / Math.PI,
            setting.BoltMm,
            setting.Bolt.X,
            setting.Bolt.Y,
            setting.HeightFromMm,
            setting.HeightToMm,
            setting.GapBeforeMm,
            setting.Contact.GapMm,
            setting.Contact.GapEstimateMm
        );
}
