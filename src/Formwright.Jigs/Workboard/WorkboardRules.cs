using Formwright.Findings;

namespace Formwright.Jigs.Workboard;

/// <summary>Rules about the workboard.</summary>
public static class WorkboardRules
{
    /// <summary>Board left under the deepest relief or ramp, mm: common practice.</summary>
    public const double LeastFloorMm = 6;

    /// <summary>Relief under a harmonic bar that still counts as support, mm: a sheet of paper (common practice).</summary>
    public const double SupportMm = 0.1;

    public static readonly Rule ReliefDeeperThanBoard = Make(
        "workboard.relief-deeper-than-board",
        Severity.Stop
    );
    public static readonly Rule RampDeeperThanBoard = Make(
        "workboard.ramp-deeper-than-board",
        Severity.Stop
    );
    public static readonly Rule BarUnsupported = Make("workboard.bar-unsupported", Severity.Note);
    public static readonly Rule MarginNarrowerThanWall = Make(
        "workboard.margin-narrower-than-wall",
        Severity.Stop
    );
    public static readonly Rule NoClearance = Make("workboard.no-clearance", Severity.Warn);
    public static readonly Rule NeckWiderThanBoard = Make(
        "workboard.neck-wider-than-board",
        Severity.Stop
    );

    public static readonly Rule OverlayTooThin = Make("workboard.overlay-too-thin", Severity.Stop);
    public static readonly Rule OverlayWithoutRim = Make(
        "workboard.overlay-without-rim",
        Severity.Stop
    );
    public static readonly Rule PackingThin = Make("workboard.packing-thin", Severity.Warn);
    public static readonly Rule BraceEndOverHollow = Make(
        "workboard.brace-end-over-hollow",
        Severity.Note
    );

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
