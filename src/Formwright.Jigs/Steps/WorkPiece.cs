namespace Formwright.Jigs.Steps;

/// <summary>What a step makes or uses.</summary>
public enum WorkPiece
{
    Templates,
    Workboard,
    Mould,
    Jig,

    /// <summary>Every time that an instrument goes onto the board.</summary>
    EachUse,
}
