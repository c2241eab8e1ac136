using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Plates;

/// <summary>What the soundboard's plate depends on.</summary>
internal static class PlateInputs
{
    /// <summary>Whether two designs have the same plate. Lists are compared entry by entry; a brace of the maker's own by its places too.</summary>
    internal static bool AreSame(InstrumentDesign a, InstrumentDesign b) =>
        a.Plate with { WoodPercent = 0 } == b.Plate with { WoodPercent = 0 }
        && a.Outline == b.Outline
        && a.Soundhole == b.Soundhole
        && a.Soundboard == b.Soundboard
        && a.HarmonicBars.SequenceEqual(b.HarmonicBars)
        && a.Bracing == b.Bracing
        && a.Braces.Count == b.Braces.Count
        && a.Braces.Zip(b.Braces).All(pair => AreSame(pair.First, pair.Second))
        && a.Bridge == b.Bridge
        && a.Saddle.AheadMm == b.Saddle.AheadMm
        && a.Identity.ScaleMm == b.Identity.ScaleMm
        && a.Identity.JoinMm == b.Identity.JoinMm
        && a.Ribs.ThicknessMm == b.Ribs.ThicknessMm
        && a.Ribs.LiningWidthMm == b.Ribs.LiningWidthMm
        && (!a.Plate.WithDome || a.Dome == b.Dome)
        && a.Wood.Soundboard == b.Wood.Soundboard
        && a.Wood.Braces == b.Wood.Braces
        && a.Wood.Bridge == b.Wood.Bridge
        && a.BoardTest == b.BoardTest;

    private static bool AreSame(BraceDesign a, BraceDesign b) =>
        a with { StationsMm = b.StationsMm, AcrossMm = b.AcrossMm } == b
        && a.StationsMm.SequenceEqual(b.StationsMm)
        && a.AcrossMm.SequenceEqual(b.AcrossMm);
}
