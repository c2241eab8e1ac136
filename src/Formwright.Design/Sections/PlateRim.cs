namespace Formwright.Design.Sections;

/// <summary>How ribs and linings hold the soundboard's edge.</summary>
public enum PlateRim
{
    /// <summary>Between hinged and clamped: the middle of both, and half their distance as what is not known.</summary>
    Between,

    /// <summary>It can turn but not rise.</summary>
    Hinged,

    /// <summary>It can neither turn nor rise.</summary>
    Clamped,
}
