namespace Formwright.Drawing;

/// <summary>What lies over what; within a level, the later mark lies over the earlier one.</summary>
public enum Level
{
    /// <summary>Flat fills and hatching.</summary>
    Ground,

    /// <summary>Lines.</summary>
    Line,

    /// <summary>Paper that clears the ground under a figure.</summary>
    Clear,

    /// <summary>Figures, texts, balloons.</summary>
    Over,
}
