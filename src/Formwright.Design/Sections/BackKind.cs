namespace Formwright.Design.Sections;

/// <summary>How the back is arched.</summary>
public enum BackKind
{
    /// <summary>One arch along, one across.</summary>
    Arches,

    /// <summary>A spherical dish.</summary>
    Sphere,
}
