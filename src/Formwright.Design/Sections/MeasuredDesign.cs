using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[measured]</c>: what the bench has found so far. A figure given here replaces the computed one, and its tolerance becomes
/// that of the measurement. All are null until measured.
/// </summary>
/// <param name="WithinMm">How far a measurement may be off, ± mm.</param>
/// <param name="RampMm">Drop of the board's ramp at the nut, mm.</param>
/// <param name="NeckFreeMm">Neck's face over the datum at the nut, box off the board and fingerboard glued, mm.</param>
/// <param name="FingerboardNutMm">Thickness of the fingerboard at the nut, mean of its edges, mm.</param>
/// <param name="FingerboardJoinMm">Thickness at the join, mean of its edges, mm.</param>
/// <param name="FretHeightMm">Fret height after levelling, mm.</param>
/// <param name="DomeBoardMm">Soundboard under the saddle over the datum, on the centreline, on the board, mm.</param>
/// <param name="DomeFreeMm">The same with the box off the board, mm.</param>
/// <param name="DomeStrungMm">The same strung, mm.</param>
/// <param name="ProjectionMm">Straight edge on the frets over the soundboard at the saddle, on the centreline, box off the board, mm.</param>
/// <param name="NutRiseMm">How far the nut rose when the strings came on, mm.</param>
/// <param name="SaddleBassMm">Saddle height under the lowest string as made, mm.</param>
/// <param name="SaddleTrebleMm">Saddle height under the highest string as made, mm.</param>
/// <param name="ActionBassMm">Action of the lowest string at fret 12, strung, mm.</param>
/// <param name="ActionTrebleMm">Action of the highest string at fret 12, strung, mm.</param>
public sealed record MeasuredDesign(
    double WithinMm,
    double? RampMm,
    double? NeckFreeMm,
    double? FingerboardNutMm,
    double? FingerboardJoinMm,
    double? FretHeightMm,
    double? DomeBoardMm,
    double? DomeFreeMm,
    double? DomeStrungMm,
    double? ProjectionMm,
    double? NutRiseMm,
    double? SaddleBassMm,
    double? SaddleTrebleMm,
    double? ActionBassMm,
    double? ActionTrebleMm
)
{
    internal static MeasuredDesign Read(TableReader table)
    {
        MeasuredDesign measured = new(
            table.Length("within", 0.05, 0, 2),
            table.OptionalLength("ramp", -10, 20),
            table.OptionalLength("neck_free", -10, 20),
            table.OptionalLength("fingerboard_nut", 1, 20),
            table.OptionalLength("fingerboard_join", 1, 20),
            table.OptionalLength("fret_height", 0, 3),
            table.OptionalLength("dome_board", -5, 25),
            table.OptionalLength("dome_free", -5, 25),
            table.OptionalLength("dome_strung", -5, 25),
            table.OptionalLength("projection", -20, 30),
            table.OptionalLength("nut_rise", -5, 10),
            table.OptionalLength("saddle_bass", 1, 30),
            table.OptionalLength("saddle_treble", 1, 30),
            table.OptionalLength("action_bass", 0, 15),
            table.OptionalLength("action_treble", 0, 15)
        );
        Pair(table, "saddle_bass", "saddle_treble");
        Pair(table, "action_bass", "action_treble");
        if (table.Has("action_bass") && !table.Has("saddle_bass"))
        {
            table.Fault("action_bass", DesignWords.Of["diagnostic.action-without-saddle"]);
        }

        return measured;
    }

    private static void Pair(TableReader table, string bass, string treble)
    {
        if (table.Has(bass) != table.Has(treble))
        {
            (string given, string missing) = table.Has(bass) ? (bass, treble) : (treble, bass);
            table.Fault(given, DesignWords.Of.Format("diagnostic.both-sides", given, missing));
        }
    }
}
