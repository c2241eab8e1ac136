namespace Formwright.Design.Sections;

/// <summary>How the strings are spread between the outermost two.</summary>
public enum StringLayout
{
    /// <summary>Equal distances from centre to centre.</summary>
    EvenCentres,

    /// <summary>Equal gaps between the strings' sides.</summary>
    EvenGaps,
}
