using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[action]</c>: how the instrument is to play. Bass and treble are the outermost strings; those between lie on the line between them.</summary>
/// <param name="BassMm">Height of the lowest string's underside over fret 12, strung, mm.</param>
/// <param name="TrebleMm">The same for the highest string, mm.</param>
/// <param name="BandMm">How far the action may miss on either side, mm.</param>
/// <param name="NutBassMm">Underside of the lowest string over the fret plane at the nut, mm.</param>
/// <param name="NutTrebleMm">The same for the highest string, mm.</param>
/// <param name="ClearanceMm">Least gap between a fretted string and the frets beyond, mm.</param>
public sealed record ActionDesign(
    double BassMm,
    double TrebleMm,
    double BandMm,
    double NutBassMm,
    double NutTrebleMm,
    double ClearanceMm
)
{
    internal static ActionDesign Read(TableReader table) =>
        new(
            table.Length("bass", 4, 0.5, 12),
            table.Length("treble", 3.2, 0.5, 12),
            table.Length("band", 0.4, 0.01, 5),
            table.Length("nut_bass", 0.6, 0, 5),
            table.Length("nut_treble", 0.5, 0, 5),
            table.Length("clearance", 0.1, 0, 2)
        );
}
