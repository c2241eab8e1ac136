namespace Formwright.Instrument.Action;

/// <summary>The height chain from nut to saddle at one stage.</summary>
/// <param name="Stage">When.</param>
/// <param name="SaddleGiven">Whether the saddle heights were given (the action follows), or the action (the saddle heights follow).</param>
/// <param name="NeckMm">Neck's face at the nut over the datum, with what the strings do, mm.</param>
/// <param name="NutRiseMm">How far the strings raise the nut, rotation at the join and creep included, mm.</param>
/// <param name="BendingRiseMm">The part of it that is the bending of the neck, before creep, mm.</param>
/// <param name="BowMm">Deepest place of the frets under the chord from nut to join, mm.</param>
/// <param name="BowAtFretMm">The same at each fret up to the join, entry 0 the nut, mm.</param>
/// <param name="DomeMm">Soundboard under the saddle on the centreline, mm.</param>
/// <param name="ProjectionMm">Straight edge on the frets at nut and join, over the soundboard at the saddle, on the centreline, mm.</param>
/// <param name="Strings">Bass to treble.</param>
/// <param name="Converged">Whether the neck's bending settled.</param>
public sealed record HeightChain(
    BuildStage Stage,
    bool SaddleGiven,
    double NeckMm,
    double NutRiseMm,
    double BendingRiseMm,
    double BowMm,
    IReadOnlyList<double> BowAtFretMm,
    double DomeMm,
    double ProjectionMm,
    IReadOnlyList<StringHeights> Strings,
    bool Converged
)
{
    /// <summary>The lowest string.</summary>
    public StringHeights Bass => Strings[0];

    /// <summary>The highest string.</summary>
    public StringHeights Treble => Strings[^1];

    /// <summary>Saddle height in the middle of the outermost strings, mm.</summary>
    public double SaddleMm => 0.5 * (Bass.SaddleMm + Treble.SaddleMm);

    /// <summary>Action at fret 12 in the middle of the outermost strings, mm.</summary>
    public double Action12Mm => 0.5 * (Bass.Action12Mm + Treble.Action12Mm);
}
