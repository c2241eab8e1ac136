using Formwright.Curves;

namespace Formwright.Trace.Joining;

/// <summary>A curve of a file as points in order, mm.</summary>
/// <param name="Points">A closed one does not repeat the first.</param>
/// <param name="IsClosed">The last point leads back to the first.</param>
/// <param name="IsStraight">Whether the way to each point from the one before was drawn as a straight line (else it is not known, or short).</param>
/// <param name="Name">Layer or id.</param>
/// <param name="Line">Line of the file where it begins.</param>
/// <param name="Column">Column there.</param>
internal sealed record Trail(
    Point[] Points,
    bool IsClosed,
    bool[] IsStraight,
    string Name,
    int Line,
    int Column
)
{
    /// <summary>Smallest box around it.</summary>
    internal Box Box { get; } = Points.Aggregate(Box.Empty, (box, point) => box.With(point));

    internal double DiagonalMm => Box.Min.DistanceTo(Box.Max);

    /// <summary>The trail as an affine map leaves it.</summary>
    internal Trail Under(Geometry.Affine map) => this with { Points = [.. Points.Select(map.Of)] };
}
