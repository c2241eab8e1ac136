namespace Formwright.Drawing;

/// <summary>How a leader ends: on an edge with an arrow, on a surface with a dot (ISO 128).</summary>
public enum LeaderEnd
{
    Arrow,
    Dot,
    None,
}
