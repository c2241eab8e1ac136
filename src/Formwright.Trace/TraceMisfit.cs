namespace Formwright.Trace;

/// <summary>How a fair outline meets the points of its trace.</summary>
/// <param name="Segments">How many Euler-spiral segments its half has.</param>
/// <param name="SegmentsMm">How far they leave the fair curve at most, mm.</param>
/// <param name="IsWithinTolerance">Whether that is within the asked tolerance.</param>
/// <param name="RmsMm">Root mean square distance of the points that lie on no bump, mm.</param>
/// <param name="LargestMm">Largest distance of those points, mm.</param>
public sealed record TraceMisfit(
    int Segments,
    double SegmentsMm,
    bool IsWithinTolerance,
    double RmsMm,
    double LargestMm
);
