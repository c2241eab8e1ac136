using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[fingerboard]</c>: thickness at nut and join sets one straight line per edge; over the body the thickness follows from that line.
/// Bass and treble are edges of the frame (a left-handed instrument swaps the strings, not these). Its wood stands in <c>[wood.fingerboard]</c>.
/// </summary>
/// <param name="ThicknessNutMm">Thickness at the nut, mm; on the bass edge if the treble edge has its own.</param>
/// <param name="ThicknessJoinMm">Thickness at the join, mm; on the bass edge if the treble edge has its own.</param>
/// <param name="ThicknessNutTrebleMm">Thickness at the nut on the treble edge, mm, or null for the same.</param>
/// <param name="ThicknessJoinTrebleMm">Thickness at the join on the treble edge, mm, or null for the same.</param>
/// <param name="FollowsKink">Whether the top bends at the join with the neck's face instead of running straight on.</param>
/// <param name="FretHeightMm">Height of the frets' crowns over the fingerboard, mm.</param>
/// <param name="OverhangMm">How far it reaches over the body past the join, mm, or null for 4 mm past the last fret.</param>
/// <param name="BowPlanedMm">Hollow planed into its top between nut and join, at its deepest, mm (negative: a crown).</param>
/// <param name="BowWantedMm">Bow that the maker wants to see when strung, at its deepest, mm.</param>
public sealed record FingerboardDesign(
    double ThicknessNutMm,
    double ThicknessJoinMm,
    double? ThicknessNutTrebleMm,
    double? ThicknessJoinTrebleMm,
    bool FollowsKink,
    double FretHeightMm,
    double? OverhangMm,
    double BowPlanedMm,
    double BowWantedMm
)
{
    internal static FingerboardDesign Read(TableReader table) =>
        new(
            table.Length("thickness_nut", 6.5, 1, 20),
            table.Length("thickness_join", 6.5, 1, 20),
            table.OptionalLength("thickness_nut_treble", 1, 20),
            table.OptionalLength("thickness_join_treble", 1, 20),
            table.Flag("follows_kink", false),
            table.Length("fret_height", 1, 0, 3),
            table.OptionalLength("overhang", 0, 400),
            table.Length("bow_planed", 0, -2, 2),
            table.Length("bow_wanted", 0.2, -2, 2)
        );
}
