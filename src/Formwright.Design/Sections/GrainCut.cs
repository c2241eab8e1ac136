namespace Formwright.Design.Sections;

/// <summary>How a board was cut from the log: which way its width lies.</summary>
public enum GrainCut
{
    /// <summary>Growth rings stand on edge: the width is radial.</summary>
    Quarter,

    /// <summary>Growth rings lie flat: the width is tangential.</summary>
    Flat,
}
