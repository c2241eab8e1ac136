namespace Formwright.Design.Sections;

/// <summary>How the soundboard is domed.</summary>
public enum DomeKind
{
    /// <summary>The shape of a membrane under even pressure, raised to the fullness.</summary>
    Membrane,
}
