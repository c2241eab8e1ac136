using System.Collections.Immutable;
using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A sheet glued on the plate, such as a bridge or a doubling: it adds stiffness, at its distance from the plate's middle, and mass.</summary>
public sealed record PlatePatch
{
    /// <param name="corners">A convex polygon, mm, either way round.</param>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="wood">What it is made of.</param>
    /// <param name="grainAngleRad">Its grain, from +x towards +y.</param>
    /// <param name="isOutside">On the outer face (a bridge) or the inner one (a doubling).</param>
    /// <exception cref="ArgumentException">The polygon is not convex, or a figure can't be.</exception>
    public PlatePatch(
        IEnumerable<Point> corners,
        double thicknessMm,
        PlateWood wood,
        double grainAngleRad,
        bool isOutside = true
    )
    {
        ArgumentNullException.ThrowIfNull(wood);
        Corners = ConvexPolygon.Checked(corners);
        ThicknessMm = Guard.Positive(thicknessMm);
        Wood = wood;
        GrainAngleRad = Guard.Finite(grainAngleRad);
        IsOutside = isOutside;
    }

    /// <summary>Corners, counter-clockwise.</summary>
    public ImmutableArray<Point> Corners { get; }

    public double ThicknessMm { get; }

    public PlateWood Wood { get; }

    public double GrainAngleRad { get; }

    public bool IsOutside { get; }

    /// <summary>A bridge: a rectangle of given middle, length across the plate and width along it, its grain across.</summary>
    public static PlatePatch Bridge(
        Point middle,
        double lengthMm,
        double widthMm,
        double thicknessMm,
        PlateWood wood
    )
    {
        var half = new Vector(Guard.Positive(widthMm) / 2, Guard.Positive(lengthMm) / 2);
        Point[] corners =
        [
            middle - half,
            middle + new Vector(half.X, -half.Y),
            middle + half,
            middle + new Vector(-half.X, half.Y),
        ];
        return new(corners, thicknessMm, wood, Math.PI / 2);
    }
}
