using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// One of <c>[[braces]]</c>: a brace along a line on the soundboard, in the body frame (stations from the heel, y towards the treble side).
/// </summary>
/// <param name="Name">Its name on the drawing.</param>
/// <param name="StationsMm">Stations u of its places, in order, mm.</param>
/// <param name="AcrossMm">Their distances y from the centreline, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="EndHeightMm">Height at its ends, mm.</param>
/// <param name="ScoopMm">Length over which each end runs down, mm.</param>
/// <param name="Mirrored">A second one stands mirrored on the other side.</param>
public sealed record BraceDesign(
    string Name,
    IReadOnlyList<double> StationsMm,
    IReadOnlyList<double> AcrossMm,
    double WidthMm,
    double HeightMm,
    double EndHeightMm,
    double ScoopMm,
    bool Mirrored
)
{
    internal static BraceDesign Read(TableReader table)
    {
        BraceDesign brace = new(
            table.Text("name", ""),
            table.Lengths("at", [], 0, 1500),
            table.Lengths("y", [], -600, 600),
            table.Length("width", 5.5, 1, 30),
            table.Length("height", 4.5, 0.5, 60),
            table.Length("end_height", 1, 0, 60),
            table.Length("scoop", 35, 0, 300),
            table.Flag("mirrored", false)
        );
        bool pairs = brace.StationsMm.Count >= 2 && brace.StationsMm.Count == brace.AcrossMm.Count;
        if (table.IsPresent && !pairs)
        {
            table.Fault("at", DesignWords.Of["diagnostic.brace-points"]);
        }
        else if (table.IsPresent && !Differ(brace))
        {
            table.Fault("at", DesignWords.Of["diagnostic.brace-same"]);
        }

        return brace;
    }

    private static bool Differ(BraceDesign brace)
    {
        for (int i = 1; i < brace.StationsMm.Count; i++)
        {
            double du = brace.StationsMm[i] - brace.StationsMm[i - 1];
            double dy = brace.AcrossMm[i] - brace.AcrossMm[i - 1];
            // A faulty length reads as NaN and is reported on its own.
            if ((du * du) + (dy * dy) < 1)
            {
                return false;
            }
        }

        return true;
    }
}
