namespace Formwright.Jigs.Parts;

/// <summary>What a hole takes.</summary>
public enum HoleKind
{
    Dowel,
    Bolt,
    CaptiveNut,

    /// <summary>Nothing: drilled to a depth that is then carved down to.</summary>
    Spot,

    /// <summary>The pin that a circle cutter turns on.</summary>
    Pilot,
}
