using Formwright.Findings;

namespace Formwright.Jigs.Brackets;

/// <summary>Rules about the slotted board and its brackets.</summary>
public static class JigRules
{
    /// <summary>Wood left beside the opening for washer and nut, mm: common practice.</summary>
    public const double LeastWoodMm = 5;

    /// <summary>How far under the back's edge the elastic must pull, mm: common practice.</summary>
    public const double ElasticMm = 10;

    /// <summary>Gap between face and ribs that a strip should fill, mm: common practice, some sheets of paper.</summary>
    public const double WaistGapMm = 0.5;

    public static readonly Rule GapTooLong = Make("jig.gap-too-long", Severity.Warn);
    public static readonly Rule FlanksDoNotMeet = Make("jig.flanks-do-not-meet", Severity.Stop);
    public static readonly Rule TooLittleWood = Make("jig.too-little-wood", Severity.Stop);
    public static readonly Rule NotchTooHigh = Make("jig.notch-too-high", Severity.Warn);
    public static readonly Rule BracketOverRibs = Make("jig.bracket-over-ribs", Severity.Warn);
    public static readonly Rule OverhangMeetsBracket = Make(
        "jig.overhang-meets-bracket",
        Severity.Stop
    );
    public static readonly Rule EdgeMeetsBracket = Make("jig.edge-meets-bracket", Severity.Stop);
    public static readonly Rule WaistGap = Make("jig.waist-gap", Severity.Note);
    public static readonly Rule SlotsTooClose = Make("jig.slots-too-close", Severity.Warn);
    public static readonly Rule SlotUnused = new(
        "jig.slot-unused",
        Severity.Note,
        "",
        JigsWords.Of
    );
    public static readonly Rule MoreSlotsThanBound = new(
        "jig.more-slots-than-bound",
        Severity.Note,
        "",
        JigsWords.Of
    );

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
