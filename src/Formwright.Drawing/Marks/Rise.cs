namespace Formwright.Drawing;

/// <summary>Which height of a text stands on its point.</summary>
public enum Rise
{
    Baseline,

    /// <summary>Half the height of a capital.</summary>
    Middle,

    /// <summary>The top of a capital.</summary>
    Top,
}
