namespace Formwright.Design.Sections;

/// <summary>Where the bridge's movement under the strings comes from.</summary>
public enum BridgeSource
{
    /// <summary>Computed from the soundboard as a plate.</summary>
    Plate,

    /// <summary>Stated in the design.</summary>
    Stated,
}
