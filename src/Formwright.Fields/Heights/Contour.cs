using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>A line of equal height. Higher ground lies to its left, so that it runs counter-clockwise round a summit.</summary>
/// <param name="HeightMm">The height, mm.</param>
/// <param name="Points">Places on the line, in order; the first is not repeated at the end of a closed one.</param>
/// <param name="IsClosed">Whether it returns to its start; an open one ends where the field ends.</param>
/// <param name="LargestDeviationMm">How far the line of equal height leaves the polyline, mm, found at the middle of each piece.</param>
public sealed record Contour(
    double HeightMm,
    IReadOnlyList<Point> Points,
    bool IsClosed,
    double LargestDeviationMm
);
