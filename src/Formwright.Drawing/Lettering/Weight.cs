namespace Formwright.Drawing;

/// <summary>Weights of the one face that ships.</summary>
public enum Weight
{
    Regular,
    Medium,
    SemiBold,
}
