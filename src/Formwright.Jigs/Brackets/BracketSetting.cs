using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>How one pair of brackets is set for one instrument: on the bass side as given, on the treble side as its mirror.</summary>
/// <param name="Slot">Number of the slot, from 1 at the heel.</param>
/// <param name="Contact">The contact.</param>
/// <param name="StationMm">Station of the contact from the heel along the centreline, mm.</param>
/// <param name="AlongSlotMm">Place of the bolt along the slot, from its inner end, mm.</param>
/// <param name="BoltMm">Distance of the bolt behind the face at the foot, mm.</param>
/// <param name="TurnRad">Turn of the bracket out of the slot's direction, rad: positive where the face is turned towards the tail.</param>
/// <param name="Bolt">Centre of the bolt on the board.</param>
/// <param name="HeightFromMm">Height over the board at which the face starts to touch the ribs, mm.</param>
/// <param name="HeightToMm">Height at which it ends, mm.</param>
/// <param name="GapBeforeMm">Rib without a contact before this one, from the contact or block nearer the heel, mm.</param>
/// <param name="Body">The bracket as seen from above, corners counter-clockwise.</param>
public sealed record BracketSetting(
    int Slot,
    FaceContact Contact,
    double StationMm,
    double AlongSlotMm,
    double BoltMm,
    double TurnRad,
    Point Bolt,
    double HeightFromMm,
    double HeightToMm,
    double GapBeforeMm,
    IReadOnlyList<Point> Body
);
