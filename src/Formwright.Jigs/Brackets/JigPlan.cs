using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Brackets;

/// <summary>A slotted board with brackets, set for one instrument or a family.</summary>
/// <param name="Design">What was asked.</param>
/// <param name="Shape">The bracket as seen from above.</param>
/// <param name="Slots">Slots on the bass side, from heel to tail; the treble side has their mirrors.</param>
/// <param name="Members">The instruments, in the order given.</param>
/// <param name="Brackets">Brackets that serve any of them, both sides.</param>
/// <param name="LowerBound">Slots on a side that no arrangement could go below: the instrument that needs most contacts needs that many.</param>
/// <param name="IsSearchWhole">Every smaller number of slots was searched to the end among the slots that were tried.</param>
/// <param name="IsGiven">The slots are those of a board that the maker has.</param>
/// <param name="Parts">Board and bracket layers.</param>
/// <param name="Hardware">Bolts, nuts and washers for all brackets, and what they must measure.</param>
/// <param name="Findings">What to see to.</param>
public sealed record JigPlan(
    JigDesign Design,
    BracketShape Shape,
    IReadOnlyList<SlotLine> Slots,
    IReadOnlyList<JigMember> Members,
    int Brackets,
    int LowerBound,
    bool IsSearchWhole,
    bool IsGiven,
    IReadOnlyList<Part> Parts,
    JigHardware Hardware,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>The slots are as few as any arrangement could have.</summary>
    public bool IsFewest => Slots.Count <= LowerBound;

    /// <summary>Longest piece of rib without a contact, over all instruments, mm.</summary>
    public double LargestGapMm => Members.Max(member => member.LargestGapMm);
}
