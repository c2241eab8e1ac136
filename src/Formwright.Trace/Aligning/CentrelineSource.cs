namespace Formwright.Trace.Aligning;

/// <summary>Where the centreline of a trace comes from.</summary>
public enum CentrelineSource
{
    /// <summary>The maker gave two places of it.</summary>
    Given,

    /// <summary>The table is one of stations along it.</summary>
    Table,

    /// <summary>The line about which the outline is its own mirror image best.</summary>
    Symmetry,

    /// <summary>The line between the ends of the half that was traced.</summary>
    Ends,

    /// <summary>The straight edge of a half template.</summary>
    StraightEdge,
}
