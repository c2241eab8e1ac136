namespace Formwright.Instrument.Action;

/// <summary>The heights along one string, over the datum unless said otherwise.</summary>
/// <param name="Number">Number of the string.</param>
/// <param name="NutMm">Underside at the nut, mm.</param>
/// <param name="SaddleTopMm">Underside at the saddle, mm.</param>
/// <param name="SaddleMm">Underside over the soundboard at the saddle: the saddle height, mm.</param>
/// <param name="DomeMm">Soundboard under it, mm.</param>
/// <param name="FretMm">Crown of each fret on the string's line, entry 0 the fret plane at the nut, mm.</param>
/// <param name="ActionMm">Underside over each fret, entry 0 at the nut, mm.</param>
/// <param name="GapMm">Least gap to the frets beyond when fretted at each fret, entry 0 open, mm; the last fret has no entry.</param>
/// <param name="GapFret">The fret where that gap is.</param>
/// <param name="BreakAngleRad">Angle by which it turns over the saddle, rad.</param>
public sealed record StringHeights(
    int Number,
    double NutMm,
    double SaddleTopMm,
    double SaddleMm,
    double DomeMm,
    IReadOnlyList<double> FretMm,
    IReadOnlyList<double> ActionMm,
    IReadOnlyList<double> GapMm,
    IReadOnlyList<int> GapFret,
    double BreakAngleRad
)
{
    /// <summary>Action at fret 12, mm.</summary>
    public double Action12Mm => ActionMm[ChainGeometry.ActionFret];
}
