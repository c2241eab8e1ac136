namespace Formwright.Jigs.Brackets;

/// <summary>How a flat face meets the outline.</summary>
public enum ContactKind
{
    /// <summary>The face is tangent to a bout, or lies on a straight piece.</summary>
    Tangent,

    /// <summary>Both edges of the face touch the hollow of the waist.</summary>
    TwoEdges,
}
