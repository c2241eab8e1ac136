namespace Formwright.Drawing;

/// <summary>Where a dimension line stands, as seen on the sheet.</summary>
public enum Side
{
    Above,
    Below,
    Left,
    Right,
}
