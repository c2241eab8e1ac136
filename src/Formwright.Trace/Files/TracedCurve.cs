using Formwright.Trace.Geometry;

namespace Formwright.Trace.Files;

/// <summary>One curve of a trace file. Arcs, Béziers and splines are kept as such until they are sampled.</summary>
/// <param name="Pieces">Each starts where the one before ends.</param>
/// <param name="IsClosed">The last one ends where the first starts.</param>
/// <param name="Name">Layer (DXF) or id (SVG) it stands on, or empty.</param>
/// <param name="Line">Line of the file where it begins, from 1.</param>
/// <param name="Column">Column there, from 1.</param>
public sealed record TracedCurve(
    IReadOnlyList<Piece> Pieces,
    bool IsClosed,
    string Name,
    int Line,
    int Column
)
{
    /// <summary>The curve as an affine map leaves it.</summary>
    public TracedCurve Under(Affine map) =>
        this with
        {
            Pieces = [.. Pieces.Select(piece => piece.Under(map))],
        };

    /// <summary>The same curve from its end to its start.</summary>
    public TracedCurve Reversed() =>
        this with
        {
            Pieces = [.. Pieces.Reverse().Select(piece => piece.Reversed())],
        };
}
