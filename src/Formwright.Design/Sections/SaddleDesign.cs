using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[saddle]</c>: saddle and bridge as the strings meet them.</summary>
/// <param name="HeightMm">Height that the maker wants, string's underside over the soundboard, middle of the outermost strings, mm.</param>
/// <param name="HeightBassMm">Height under the lowest string if it is made and stays, mm; null where it follows from the action.</param>
/// <param name="HeightTrebleMm">The same for the highest string, mm.</param>
/// <param name="LeastMm">Least height that the bridge allows, mm.</param>
/// <param name="MostMm">Greatest height that the bridge allows, mm.</param>
/// <param name="Compensation">How nut and saddle are set for intonation.</param>
/// <param name="ThicknessMm">Thickness of the saddle, mm.</param>
/// <param name="SlotBottomMm">Bottom of the saddle's slot over the soundboard, mm.</param>
/// <param name="AheadMm">How far the saddle stands ahead of the bridge's middle, towards the nut, mm.</param>
/// <param name="TieBehindMm">Distance from saddle to tie hole, mm.</param>
/// <param name="TieHeightMm">Tie hole over the soundboard, mm.</param>
/// <param name="BreakLeastDeg">Least break angle over the saddle, degrees.</param>
/// <param name="BreakMostDeg">Greatest break angle over the saddle, degrees.</param>
public sealed record SaddleDesign(
    double HeightMm,
    double? HeightBassMm,
    double? HeightTrebleMm,
    double LeastMm,
    double MostMm,
    SaddleCompensation Compensation,
    double ThicknessMm,
    double SlotBottomMm,
    double AheadMm,
    double TieBehindMm,
    double TieHeightMm,
    double BreakLeastDeg,
    double BreakMostDeg
)
{
    internal static SaddleDesign Read(TableReader table)
    {
        double? bass = table.OptionalLength("height_bass", 1, 30);
        double? treble = table.OptionalLength("height_treble", 1, 30);
        if (bass is null != treble is null)
        {
            table.Fault(
                bass is null ? "height_treble" : "height_bass",
                DesignWords.Of["diagnostic.saddle-sides"]
            );
        }

        SaddleDesign saddle = new(
            table.Length("height", 10, 1, 30),
            bass,
            treble,
            table.Length("least", 8, 1, 30),
            table.Length("most", 12, 1, 30),
            table.Choice("compensation", SaddleCompensation.Straight),
            table.Length("thickness", 3, 1, 10),
            table.Length("slot_bottom", 3, 0, 20),
            table.Length("ahead", 5, -30, 30),
            table.Length("tie_behind", 11, 3, 60),
            table.Length("tie_height", 4.5, 0, 20),
            table.Number("break_least", 10, 0, 90, "°"),
            table.Number("break_most", 40, 0, 90, "°")
        );
        table.InOrder("least", saddle.LeastMm, "most", saddle.MostMm);
        table.InOrder("break_least", saddle.BreakLeastDeg, "break_most", saddle.BreakMostDeg);
        return saddle;
    }
}
