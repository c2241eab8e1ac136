using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>A bracket set to one contact, with its body and the room of its bolt.</summary>
/// <param name="Contact">The contact.</param>
/// <param name="BoltFromMm">Nearest place of the bolt behind the face, mm.</param>
/// <param name="BoltToMm">Farthest place of the bolt behind the face, mm.</param>
/// <param name="Body">The bracket as seen from above, corners counter-clockwise.</param>
internal sealed record RibPose(
    FaceContact Contact,
    double BoltFromMm,
    double BoltToMm,
    IReadOnlyList<Point> Body
)
{
    private double MiddleMm { get; } = (BoltFromMm + BoltToMm) / 2;
    private Vector Outward { get; } = Contact.Outward;

    /// <summary>Where the bolt stands with as much room before as behind it.</summary>
    public Point UsualBolt => Contact.Middle + (Outward * MiddleMm);

    /// <summary>The bolt in a slot: its place along the slot and its distance behind the face; null where it can't be in both.</summary>
    public (double AlongMm, double BehindMm)? BoltIn(SlotLine slot)
    {
        Vector along = (slot.To - slot.From) * (1 / slot.LengthMm);
        Vector from = Contact.Middle - slot.From;
        double off = along.Cross(from);
        double slant = along.Cross(Outward);

        // A bracket that points along its slot may stand anywhere in it: take the middle.
        double behind = Math.Abs(slant) > 1e-6 ? -off / slant : MiddleMm;
        behind = Math.Clamp(behind, BoltFromMm, BoltToMm);
        if (Math.Abs(off + (behind * slant)) > JigMaker.OffSlotMm)
        {
            return null;
        }

        double place = (from + (Outward * behind)).Dot(along);
        return place >= -1e-9 && place <= slot.LengthMm + 1e-9
            ? (Math.Clamp(place, 0, slot.LengthMm), behind)
            : null;
    }
}
