using Formwright.Findings;

namespace Formwright.Jigs.BoardChecks;

/// <summary>Rules about a workboard as it was measured: the gate before each use.</summary>
public static class BoardCheckRules
{
    public static readonly Rule RampTooLarge = Make("board-check.ramp-too-large", Severity.Stop);
    public static readonly Rule RampTooSmall = Make("board-check.ramp-too-small", Severity.Stop);
    public static readonly Rule Hump = Make("board-check.hump", Severity.Stop);
    public static readonly Rule Hollow = Make("board-check.hollow", Severity.Warn);
    public static readonly Rule Twist = Make("board-check.twist", Severity.Stop);
    public static readonly Rule OneSideOnly = Make("board-check.one-side-only", Severity.Note);
    public static readonly Rule ReliefShallow = Make("board-check.relief-shallow", Severity.Stop);

    private static Rule Make(string code, Severity severity) =>
        new(code, severity, "mm", JigsWords.Of);
}
