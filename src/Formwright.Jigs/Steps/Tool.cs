namespace Formwright.Jigs.Steps;

/// <summary>What a step takes.</summary>
public enum Tool
{
    Printer,
    Rule,
    StraightEdge,
    FeelerGauges,
    DepthGauge,
    Square,
    Caliper,
    Saw,
    Bandsaw,
    Plane,
    Gouge,
    Scraper,
    SandingBlock,
    Router,
    BearingCutter,
    RebateCutter,
    Drill,
    DepthStop,
    Clamps,
    Glue,
    WaxedPaper,
    Mallet,
    Spanner,
    Sealer,
    Brush,
}
