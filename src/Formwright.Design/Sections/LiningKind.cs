namespace Formwright.Design.Sections;

/// <summary>How the linings take the bend.</summary>
public enum LiningKind
{
    /// <summary>Sawn across so that they bend cold.</summary>
    Kerfed,

    /// <summary>Bent hot, as the ribs are.</summary>
    Solid,
}
