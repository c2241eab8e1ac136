using System.ComponentModel;
using Formwright.Jigs.Brackets;

namespace Formwright.Packs.Report;

/// <summary>One instrument on the slotted board.</summary>
public sealed record JigMemberReport(
    [property: Description("Name of the instrument.")] string Name,
    [property: Description("Longest piece of rib without a contact, mm.")] double LargestGapMm,
    [property: Description("Where that piece starts, along the outline from the heel, mm.")]
        double GapFromMm,
    [property: Description("Where it ends, mm.")] double GapToMm,
    [property: Description(
        "Fewest brackets on a side within the allowed gap; absent where these slots can't."
    )]
        int? FewestBrackets,
    [property: Description("Least distance between two brackets, mm; absent for less than two.")]
        double? BetweenBracketsMm,
    [property: Description("How far the ribs reach into a bracket, mm.")] double IntoBracketMm,
    [property: Description(
        "Settings of the bass side, from heel to tail; the treble side is their mirror."
    )]
        IReadOnlyList<JigSettingReport> Settings
)
{
    internal static JigMemberReport Of(JigMember member) =>
        new(
            member.Name,
            member.LargestGapMm,
            member.GapFromMm,
            member.GapToMm,
            member.Fewest,
            double.IsFinite(member.BetweenBracketsMm) ? member.BetweenBracketsMm : null,
            member.IntoBracketMm,
            [.. member.Settings.Select(JigSettingReport.Of)]
        );
}
