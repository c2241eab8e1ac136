using Formwright.Curves;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock;

/// <summary>A part on a sheet of stock. Sheet frame: origin at a corner, x along the sheet's length (the grain), y across.</summary>
/// <param name="Part">The part.</param>
/// <param name="Number">Its number in the cut list, from 1.</param>
/// <param name="AngleRad">How far it is turned, rad.</param>
/// <param name="Shift">Where the origin of its frame comes to lie, mm.</param>
public sealed record PlacedPart(Part Part, int Number, double AngleRad, Vector Shift)
{
    /// <summary>Where a place of the part's own frame lies on the sheet. A part that is cut from below lies face down.</summary>
    public Point Apply(Point place)
    {
        (double sin, double cos) = Nesting.TurnedOutline.SinCos(AngleRad);
        double y = Part.IsTurnedOver ? -place.Y : place.Y;
        return new Point((place.X * cos) - (y * sin), (place.X * sin) + (y * cos)) + Shift;
    }

    /// <summary>An edge of the part as it lies on the sheet.</summary>
    public ArcPath Apply(ArcPath edge)
    {
        ArgumentNullException.ThrowIfNull(edge);
        int side = Part.IsTurnedOver ? -1 : 1;
        return edge with
        {
            Vertices =
            [
                .. edge.Vertices.Select(v => new ArcVertex(Apply(v.Position), side * v.Bulge)),
            ],
        };
    }
}
