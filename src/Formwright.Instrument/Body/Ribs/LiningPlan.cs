namespace Formwright.Instrument.Body.Ribs;

/// <summary>The linings of one rib.</summary>
/// <param name="FrontMm">Length along the soundboard between the blocks, at its middle, mm.</param>
/// <param name="BackMm">Length along the back, mm.</param>
/// <param name="TightestMm">Smallest radius of its face against the rib, mm.</param>
/// <param name="StrainPercent">Stretch of a solid lining's outer fibre there, %.</param>
/// <param name="KerfStepMm">Distance of kerfs with which they just close at the tightest bend, mm; infinite where nothing bends inwards.</param>
/// <param name="Kerfs">Kerfs on one lining of the longer length at that distance.</param>
/// <param name="GlueBlocks">Glue blocks along the soundboard of one rib; 0 where there is a lining.</param>
/// <param name="GlueBlockRoundMm">How far the middle of a glue block's face stands off a straight one at the tightest bend, mm: plane that off its ends.</param>
public sealed record LiningPlan(
    double FrontMm,
    double BackMm,
    double TightestMm,
    double StrainPercent,
    double KerfStepMm,
    int Kerfs,
    int GlueBlocks,
    double GlueBlockRoundMm
);
