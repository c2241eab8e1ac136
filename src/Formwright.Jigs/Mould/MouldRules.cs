using Formwright.Findings;

namespace Formwright.Jigs.Mould;

/// <summary>Rules about the mould.</summary>
public static class MouldRules
{
    /// <summary>Least distance of a hole's centre from an edge, in diameters: common practice.</summary>
    public const double EdgeDiameters = 1.5;

    /// <summary>Least distance between two holes' centres, in diameters of the larger: common practice.</summary>
    public const double SpacingDiameters = 3;

    public static readonly Rule RebateTooDeep = Make("mould.rebate-too-deep", Severity.Stop);
    public static readonly Rule OverhangWiderThanRebate = Make(
        "mould.overhang-wider-than-rebate",
        Severity.Stop
    );
    public static readonly Rule RebateWiderThanWall = Make(
        "mould.rebate-wider-than-wall",
        Severity.Stop
    );
    public static readonly Rule RebateDeeperThanLayer = Make(
        "mould.rebate-deeper-than-layer",
        Severity.Stop
    );
    public static readonly Rule HoleTooNearEdge = Make("mould.hole-too-near-edge", Severity.Stop);
    public static readonly Rule HolesTooClose = Make("mould.holes-too-close", Severity.Warn);
    public static readonly Rule EndsCutTooFar = Make("mould.ends-cut-too-far", Severity.Stop);

    /// <summary>Move of the inner face in the dowels' play that a rib still hides, mm: common practice.</summary>
    public const double FarEndMm = 0.2;

    /// <summary>Wood left over a rebate when the foot of a mould is planed, mm: common practice.</summary>
    public const double LeastLayerMm = 6;

    public static readonly Rule CutterTooLarge = Make("mould.cutter-too-large", Severity.Stop);
    public static readonly Rule NoBoltFits = Make("mould.no-bolt-fits", Severity.Warn);
    public static readonly Rule FarEndMoves = Make("mould.far-end-moves", Severity.Warn);
    public static readonly Rule HoleOnJoint = Make("mould.hole-on-joint", Severity.Warn);
    public static readonly Rule JointsInLine = Make("mould.joints-in-line", Severity.Warn);

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
