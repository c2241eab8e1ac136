namespace Formwright.Design.Sections;

/// <summary>Which place of every instrument lies on the line scribed across the slotted board.</summary>
public enum JigAlignment
{
    Waist,
    Join,
    Tail,
}
