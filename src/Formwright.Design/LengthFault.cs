namespace Formwright.Design;

/// <summary>Why a length could not be read.</summary>
public enum LengthFault
{
    /// <summary>It was read.</summary>
    None,

    /// <summary>No number that we understand.</summary>
    NotANumber,

    /// <summary>A number, but a unit that we don't know.</summary>
    UnknownUnit,
}
