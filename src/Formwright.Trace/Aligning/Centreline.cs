using Formwright.Curves;

namespace Formwright.Trace.Aligning;

/// <summary>A centreline given by two of its places, in the file's own frame after its unit is applied, mm (y up).</summary>
public readonly record struct Centreline(Point From, Point To);
