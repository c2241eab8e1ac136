namespace Formwright.Jigs.Parts;

/// <summary>How a part lies to the grain of what it is cut from.</summary>
public enum PartGrain
{
    /// <summary>It does not matter.</summary>
    Any,

    /// <summary>Its length (x of its frame) lies along the grain.</summary>
    AlongLength,
}
