namespace Formwright.Design.Sections;

/// <summary>What is bought ready made.</summary>
public enum HardwareKind
{
    Dowel,
    Bolt,
    CaptiveNut,
    Nut,
    Washer,
}
