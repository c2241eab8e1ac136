namespace Formwright.Jigs.Parts;

/// <summary>What a hole takes.</summary>
public enum HoleKind
{
    Dowel,
    Bolt,
    CaptiveNut,
}
