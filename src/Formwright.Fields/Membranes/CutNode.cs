namespace Formwright.Fields;

/// <summary>An inner node next to the edge, and how long its four arms are in steps; 1 where the arm ends at a neighbour.</summary>
internal readonly record struct CutNode(
    int Index,
    double West,
    double East,
    double South,
    double North
);
