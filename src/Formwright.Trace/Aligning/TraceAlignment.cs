using Formwright.Curves;

namespace Formwright.Trace.Aligning;

/// <summary>How a trace was laid on the centreline.</summary>
/// <param name="HeelInFile">Where the heel lies in the file, mm.</param>
/// <param name="AngleRad">Direction of the centreline in the file, heel to tail, from +x towards +y (y up).</param>
/// <param name="Source">Where the centreline comes from.</param>
/// <param name="ResidualMm">Root mean square distance of one side from the mirrored other, half of it on each; 0 where only one side is given.</param>
/// <param name="LargestMm">Largest such distance, mm.</param>
/// <param name="IsMirrored">The trace was seen from behind and was turned over.</param>
public sealed record TraceAlignment(
    Point HeelInFile,
    double AngleRad,
    CentrelineSource Source,
    double ResidualMm,
    double LargestMm,
    bool IsMirrored
);
