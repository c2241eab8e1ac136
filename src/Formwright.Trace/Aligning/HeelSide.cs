namespace Formwright.Trace.Aligning;

/// <summary>Where the heel lies in a drawing.</summary>
public enum HeelSide
{
    /// <summary>At the narrower end.</summary>
    Auto,
    Top,
    Bottom,
    Left,
    Right,
}
