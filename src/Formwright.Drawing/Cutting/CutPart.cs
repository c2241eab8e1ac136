namespace Formwright.Drawing;

/// <summary>A flat part as a machine cuts it, in part mm, seen on its upper face. Outer and inner contours do not touch.</summary>
/// <param name="Id">Plain name of the part, as in the cut list.</param>
/// <param name="Contours">Lines to cut along.</param>
public sealed record CutPart(string Id, IReadOnlyList<CutContour> Contours)
{
    public IReadOnlyList<CutHole> Holes { get; init; } = [];

    public IReadOnlyList<CutText> Texts { get; init; } = [];
}
