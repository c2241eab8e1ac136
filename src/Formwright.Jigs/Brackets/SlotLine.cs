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

    /// <summary>Least distance of its ends from the centreline, mm; below 0 beyond it.</summary>
    public double LeastYMm => Math.Min(From.Y, To.Y);

    /// <summary>The same slot, longer at both ends.</summary>
    public SlotLine Longer(double byMm)
    {
        Vector along = (To - From) * (byMm / LengthMm);
        return new SlotLine(From - along, To + along);
    }
}
