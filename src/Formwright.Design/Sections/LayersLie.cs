namespace Formwright.Design.Sections;

/// <summary>How the layers of a spine lie.</summary>
public enum LayersLie
{
    /// <summary>Under each other: each layer makes it deeper.</summary>
    Flat,

    /// <summary>Side by side: each layer makes it wider.</summary>
    OnEdge,
}
