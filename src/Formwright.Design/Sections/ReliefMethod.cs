namespace Formwright.Design.Sections;

/// <summary>How the workboard clears the dome.</summary>
public enum ReliefMethod
{
    /// <summary>Carved into the board.</summary>
    Carved,

    /// <summary>A ring of cork on the flat board, the belly cut out of it.</summary>
    CorkOverlay,

    /// <summary>A ring of plywood on the flat board, the belly cut out of it.</summary>
    PlywoodOverlay,
}
