using System.ComponentModel;
using Formwright.Jigs.Brackets;

namespace Formwright.Packs.Report;

/// <summary>A slot of the board: the bolt's centre at both ends of its travel.</summary>
public sealed record JigSlotReport(
    [property: Description(
        "Inner end from the line across the board, towards the tail positive, mm."
    )]
        double FromXMm,
    [property: Description("Inner end from the centreline, mm.")] double FromYMm,
    [property: Description(
        "Outer end from the line across the board, towards the tail positive, mm."
    )]
        double ToXMm,
    [property: Description("Outer end from the centreline, mm.")] double ToYMm,
    [property: Description("Travel of the bolt, mm.")] double TravelMm
)
{
    internal static JigSlotReport Of(SlotLine slot) =>
        new(slot.From.X, slot.From.Y, slot.To.X, slot.To.Y, slot.LengthMm);
}
