using Formwright.Curves;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>
/// A rib laid flat, the soundboard's edge down and the tail at the left: the bass rib seen on its outer face, or the treble rib on its inner face
/// (run the other way, the treble rib on its outer face). Lengths are taken at mid-thickness, so they are what the flat piece has.
/// </summary>
/// <param name="Points">Places from the tail end to the heel end.</param>
/// <param name="Stations">Marked places, from the tail end.</param>
/// <param name="Bends">Bends, from the tail end.</param>
/// <param name="LengthMm">Length from end to end, mm.</param>
/// <param name="OutlineMm">Length from the centreline at the tail to the centreline at the heel, mm.</param>
/// <param name="LeastHeightMm">Smallest height, mm.</param>
/// <param name="MostHeightMm">Greatest height, mm.</param>
/// <param name="BlankLengthMm">Length of the blank with both allowances, mm.</param>
/// <param name="BlankWidthMm">Width of the blank with its allowance, mm.</param>
/// <param name="AreaMm2">Area of one rib, mm².</param>
/// <param name="MassG">Mass of one rib, g.</param>
/// <param name="IsFrontStraight">The edge at the soundboard is a straight line.</param>
/// <param name="Lining">Linings of one rib.</param>
/// <param name="TailBlock">Tail block.</param>
/// <param name="HeelBlock">Heel block, or null where the heel has its slots.</param>
public sealed record RibPlan(
    IReadOnlyList<RibPoint> Points,
    IReadOnlyList<RibStation> Stations,
    IReadOnlyList<RibBend> Bends,
    double LengthMm,
    double OutlineMm,
    double LeastHeightMm,
    double MostHeightMm,
    double BlankLengthMm,
    double BlankWidthMm,
    double AreaMm2,
    double MassG,
    bool IsFrontStraight,
    LiningPlan Lining,
    BlockFace TailBlock,
    BlockFace? HeelBlock
)
{
    /// <summary>The flat pattern as a closed polygon: along from the tail end, up from the soundboard's edge.</summary>
    public IReadOnlyList<Point> Pattern =>
        [
            .. Points.Select(at => new Point(at.AlongMm, at.FrontMm)),
            .. Points.Reverse().Select(at => new Point(at.AlongMm, at.BackMm)),
        ];
}
