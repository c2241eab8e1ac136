namespace Formwright.Jigs.Brackets;

/// <summary>One instrument on the slotted board.</summary>
/// <param name="Rib">Its outline on the board.</param>
/// <param name="Settings">Its brackets from heel to tail, one side.</param>
/// <param name="LargestGapMm">Longest piece of rib without a contact, mm.</param>
/// <param name="GapFromMm">Arc length from the heel at which that piece starts, mm.</param>
/// <param name="GapToMm">Arc length at which it ends, mm.</param>
/// <param name="Fewest">Fewest brackets on a side that hold it within the largest gap; null where these slots can't.</param>
/// <param name="BetweenBracketsMm">Least distance between two of its brackets, mm; infinite for one.</param>
/// <param name="IntoBracketMm">How far the ribs reach into a bracket, mm: 0 where none does.</param>
public sealed record JigMember(
    RibLine Rib,
    IReadOnlyList<BracketSetting> Settings,
    double LargestGapMm,
    double GapFromMm,
    double GapToMm,
    int? Fewest,
    double BetweenBracketsMm,
    double IntoBracketMm
)
{
    /// <summary>Name of the instrument.</summary>
    public string Name => Rib.Name;
}
