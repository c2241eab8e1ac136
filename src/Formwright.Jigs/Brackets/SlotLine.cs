using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>
/// A straight slot on the bass side of the board (the treble side has its mirror), given by the bolt's centre at both ends of its travel.
/// Board frame: x towards the tail from the line across the board, y from the centreline.
/// </summary>
/// <param name="From">Inner end.</param>
/// <param name="To">Outer end.</param>
public readonly record struct SlotLine(Point From, Point To)
{
    /// <summary>Travel of the bolt, mm.</summary>
    public double LengthMm => From.DistanceTo(To);

    /// <summary>Direction from the inner end to the outer, rad from +x towards +y.</summary>
    public double AngleRad => (To - From).Angle;
}
