using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>A step of even depth.</summary>
/// <param name="Edge">Its edge, closed.</param>
/// <param name="DepthMm">Depth from the face that is cut, mm.</param>
/// <param name="FromBelow">It is cut from the face that lies on the board, not from the upper one.</param>
public sealed record Pocket(ArcPath Edge, double DepthMm, bool FromBelow);
