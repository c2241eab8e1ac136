namespace Formwright.Design.Sections;

/// <summary>How the workboard clears the dome.</summary>
public enum ReliefMethod
{
    /// <summary>Carved into the board.</summary>
    Carved,
}
