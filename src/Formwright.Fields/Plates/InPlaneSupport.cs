namespace Formwright.Fields.Plates;

/// <summary>How an edge of a plate is held within its plane. It matters only where braces, patches or a dome tie bending to stretching.</summary>
public enum InPlaneSupport
{
    /// <summary>Not at all.</summary>
    Free,

    /// <summary>It can't slide along itself but can move in and out, as on ribs, which are stiff along the outline and soft across it.</summary>
    AlongRim,

    /// <summary>It can't move at all.</summary>
    Held,
}
