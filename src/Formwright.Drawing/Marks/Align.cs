namespace Formwright.Drawing;

/// <summary>Which end of a text stands on its point; in a table, how a column is set.</summary>
public enum Align
{
    Left,
    Centre,
    Right,
}
