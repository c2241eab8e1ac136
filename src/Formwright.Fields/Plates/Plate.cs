using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// A thin plate of wood with what is glued to it: all that the model needs to know. Places in mm in any frame whose z points out of
/// the plate's outer face; angles from +x towards +y.
/// </summary>
public sealed record Plate
{
    /// <summary>Its outer edge, a closed curve.</summary>
    public required ICurve Rim { get; init; }

    /// <summary>Holes inside it, closed curves.</summary>
    public IReadOnlyList<ICurve> Holes { get; init; } = [];

    public required PlateWood Wood { get; init; }

    /// <summary>Direction of the grain.</summary>
    public double GrainAngleRad { get; init; }

    /// <summary>Thickness at a place, mm.</summary>
    public required Func<Point, double> ThicknessMm { get; init; }

    /// <summary>How the outer edge is held.</summary>
    public EdgeSupport Support { get; init; } = EdgeSupport.Hinged;

    /// <summary>How each edge is held, by the middle of its pieces, if that differs along it; holes too. Null: <see cref="Support"/>, holes free.</summary>
    public Func<Point, EdgeSupport>? SupportAt { get; init; }

    public IReadOnlyList<PlateBrace> Braces { get; init; } = [];

    public IReadOnlyList<PlatePatch> Patches { get; init; } = [];

    /// <summary>Slope of the unloaded plate's middle surface (dz/dx, dz/dy), for a domed plate; null for a flat one.</summary>
    public Func<Point, Vector>? DomeSlope { get; init; }

    /// <summary>Whether stretching takes part in bending: there are braces off the middle, patches or a dome.</summary>
    internal bool IsCoupled =>
        DomeSlope is not null
        || Patches.Count > 0
        || Braces.Any(brace => brace.OffsetMm is null or not 0);
}
