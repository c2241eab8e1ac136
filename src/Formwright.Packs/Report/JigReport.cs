using System.ComponentModel;
using Formwright.Jigs.Brackets;

namespace Formwright.Packs.Report;

/// <summary>A bracket jig's figures, for one instrument or a family.</summary>
public sealed record JigReport(
    [property: Description(
        "Slots on the bass side, from heel to tail; the treble side has their mirrors."
    )]
        IReadOnlyList<JigSlotReport> Slots,
    [property: Description("Slots on a side that no arrangement could go below.")]
        int SlotsLowerBound,
    [property: Description("Whether the slots are as few as any arrangement could have.")]
        bool IsFewest,
    [property: Description(
        "Whether every smaller number of slots was searched to the end among the slots that were tried."
    )]
        bool IsSearchWhole,
    [property: Description("Whether the slots are those of a board that the maker has.")]
        bool IsBoardGiven,
    [property: Description("Brackets that serve any of the instruments, both sides.")] int Brackets,
    [property: Description("Longest piece of rib that may stand free, mm.")] double AllowedGapMm,
    [property: Description("Longest piece of rib that stands free on any instrument, mm.")]
        double LargestGapMm,
    [property: Description("Width of the slots, mm.")] double SlotWidthMm,
    [property: Description("Greatest width of a bracket, mm.")] double BracketWidthMm,
    [property: Description("Layers of a bracket.")] int BracketLayers,
    [property: Description("Height at which washer and nut sit, mm.")] double SeatMm,
    [property: Description("Shortest bolt under its head, mm.")] double BoltLengthMm,
    [property: Description("The instruments, in the order given.")]
        IReadOnlyList<JigMemberReport> Instruments
)
{
    /// <summary>The report of a plan.</summary>
    public static JigReport Of(JigPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            [.. plan.Slots.Select(JigSlotReport.Of)],
            plan.LowerBound,
            plan.IsFewest,
            plan.IsSearchWhole,
            plan.IsGiven,
            plan.Brackets,
            plan.Design.LargestGapMm,
            plan.LargestGapMm,
            plan.Hardware.HoleMm,
            plan.Shape.WidthMm,
            plan.Shape.Layers,
            plan.Shape.SeatMm,
            plan.Hardware.LengthMm,
            [.. plan.Members.Select(JigMemberReport.Of)]
        );
    }
}
