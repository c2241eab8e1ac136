using Formwright.Findings;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Workboard;

/// <summary>The workboard of one instrument, in its own frame (x from the nut, y_b towards the bass side, z_b up out of the board).</summary>
/// <param name="Board">The board as a part: edge, holes for the mould, marks.</param>
/// <param name="Parts">What belongs to it: overlay, packing and support blocks, or the gauges for carving.</param>
/// <param name="Spots">Holes to drill to the depth of a carved relief; empty for an overlay.</param>
/// <param name="Relief">The hollow under the dome.</param>
/// <param name="RampMm">Drop of the neck surface at the nut, mm.</param>
/// <param name="GapTable">What a straight edge resting at tail and join must show.</param>
/// <param name="Clearances">Depth and what is left under the dome, every 50 mm along and 30 mm across.</param>
/// <param name="BraceEnds">What lies open under the ends of the braces.</param>
/// <param name="Findings">What to see to.</param>
public sealed record WorkboardPlan(
    Part Board,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<Spot> Spots,
    Relief Relief,
    double RampMm,
    IReadOnlyList<GapRow> GapTable,
    IReadOnlyList<ClearanceRow> Clearances,
    IReadOnlyList<BraceEndGap> BraceEnds,
    IReadOnlyList<Finding> Findings
);
