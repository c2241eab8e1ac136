using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>
/// A flat face set against the outline from outside. Board frame: x towards the tail from the line across the board, y from the centreline
/// (the bass side; the treble side is its mirror).
/// </summary>
/// <param name="Kind">Tangent or two edges.</param>
/// <param name="Face">Which end of the bracket.</param>
/// <param name="ArcMm">Arc length of the outline from the heel to the middle of the contact, mm.</param>
/// <param name="FromMm">Arc length at which the contact starts: the first edge, or the same as <paramref name="ArcMm"/>.</param>
/// <param name="ToMm">Arc length at which it ends.</param>
/// <param name="Middle">Middle of the face.</param>
/// <param name="OutwardRad">Direction of the bracket's axis, out of the body, rad from +x towards +y.</param>
/// <param name="GapMm">Between the middle of the face and the ribs, the greatest distance, mm; 0 for a tangent face.</param>
/// <param name="GapEstimateMm">The rule of thumb for it, w²/8R, mm; 0 for a tangent face.</param>
/// <param name="RadiusMm">Radius of the outline there, mm, without sign.</param>
public readonly record struct FaceContact(
    ContactKind Kind,
    BracketFace Face,
    double ArcMm,
    double FromMm,
    double ToMm,
    Point Middle,
    double OutwardRad,
    double GapMm,
    double GapEstimateMm,
    double RadiusMm
)
{
    /// <summary>Unit vector out of the body.</summary>
    public Vector Outward => Vector.At(OutwardRad);
}
