using Formwright.Curves;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>The face of a block against the inside of the ribs, and its heights. Place (v, y): v into the box from the face's middle.</summary>
/// <param name="IsTail">Tail block; else the heel block.</param>
/// <param name="WidthMm">Width across, mm.</param>
/// <param name="ThicknessMm">Thickness in its middle along the centreline, mm.</param>
/// <param name="Face">The curved face from bass to treble: how far it stands back from its middle, mm, over y.</param>
/// <param name="DropMm">How far its corners stand back, mm.</param>
/// <param name="HeightMiddleMm">Height at the middle of the face, mm.</param>
/// <param name="HeightCornerMm">Height at the corners of the face, mm.</param>
/// <param name="HeightInsideMm">Height at the middle of the inner side, mm.</param>
public sealed record BlockFace(
    bool IsTail,
    double WidthMm,
    double ThicknessMm,
    IReadOnlyList<Point> Face,
    double DropMm,
    double HeightMiddleMm,
    double HeightCornerMm,
    double HeightInsideMm
);
