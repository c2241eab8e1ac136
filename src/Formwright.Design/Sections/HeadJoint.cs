namespace Formwright.Design.Sections;

/// <summary>How the head is joined to the neck.</summary>
public enum HeadJoint
{
    /// <summary>A slanting joint; the neck's board is cut, the piece turned over and glued back.</summary>
    Scarf,

    /// <summary>Sawn from one thick piece.</summary>
    OnePiece,
}
