namespace Formwright.Design.Sections;

/// <summary>How the soundboard is domed.</summary>
public enum DomeKind
{
    /// <summary>The shape of a membrane under even pressure, raised to the fullness.</summary>
    Membrane,

    /// <summary>A spherical dish with a flat rim blended in.</summary>
    Dish,

    /// <summary>The rim follows the sphere; flat as far as the dome's start (the upper harmonic bar unless asked otherwise).</summary>
    RimOnSphere,
}
