using System.Collections.Immutable;
using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A part of a plate that carries a load or whose mean movement is asked for: a place, a convex polygon or the whole plate.</summary>
public sealed record PlateSpot
{
    private PlateSpot(Point? at, ImmutableArray<Point> corners)
    {
        Place = at;
        Corners = corners;
    }

    /// <summary>The whole plate, evenly.</summary>
    public static PlateSpot Whole { get; } = new(null, []);

    /// <summary>The place, if it is a single one.</summary>
    public Point? Place { get; }

    /// <summary>The polygon, counter-clockwise, if it is one.</summary>
    public ImmutableArray<Point> Corners { get; }

    /// <summary>A single place.</summary>
    public static PlateSpot At(Point place) =>
        place.IsFinite
            ? new(place, [])
            : throw new ArgumentException("A place must be finite.", nameof(place));

    /// <summary>The inside of a convex polygon, evenly.</summary>
    public static PlateSpot Of(IEnumerable<Point> corners) =>
        new(null, ConvexPolygon.Checked(corners));
}
