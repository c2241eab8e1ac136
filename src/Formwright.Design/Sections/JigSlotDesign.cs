using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[[jig.slots]]</c>: a slot that the board already has, on the bass side; the treble side is its mirror. The places are those of the
/// bolt's centre at both ends of its travel.
/// </summary>
/// <param name="FromXMm">Inner end: from the line across the board, towards the tail positive, mm.</param>
/// <param name="FromYMm">Inner end: from the centreline, mm.</param>
/// <param name="ToXMm">Outer end: from the line across the board, mm.</param>
/// <param name="ToYMm">Outer end: from the centreline, mm.</param>
public sealed record JigSlotDesign(double FromXMm, double FromYMm, double ToXMm, double ToYMm)
{
    internal static JigSlotDesign Read(TableReader table)
    {
        JigSlotDesign slot = new(
            table.Length("from_x", null, -1000, 1000),
            table.Length("from_y", null, 0, 1000),
            table.Length("to_x", null, -1000, 1000),
            table.Length("to_y", null, 0, 1000)
        );
        if (slot.FromXMm == slot.ToXMm && slot.FromYMm == slot.ToYMm)
        {
            table.Fault("to_x", DesignWords.Of["diagnostic.slot-empty"]);
        }

        return slot;
    }
}
