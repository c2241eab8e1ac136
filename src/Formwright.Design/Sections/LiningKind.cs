namespace Formwright.Design.Sections;

/// <summary>How the linings take the bend.</summary>
public enum LiningKind
{
    /// <summary>Sawn across so that they bend cold.</summary>
    Kerfed,

    /// <summary>Bent hot, as the ribs are.</summary>
    Solid,

    /// <summary>Separate glue blocks along the soundboard, set one by one on the workboard; a kerfed lining at the back.</summary>
    GlueBlocks,
}
