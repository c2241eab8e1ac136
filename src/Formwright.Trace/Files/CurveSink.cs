using Formwright.Trace.Geometry;

namespace Formwright.Trace.Files;

/// <summary>Gathers the curves of a file while it is read, and keeps count against <see cref="TraceLimits"/>.</summary>
internal sealed class CurveSink(string file)
{
    private readonly List<TracedCurve> curves = [];
    private int pieces;

    internal string File { get; } = file;

    internal IReadOnlyList<TracedCurve> Curves => curves;

    /// <summary>Adds a curve under a map; pieces without length are dropped, and so is a curve that has no other.</summary>
    /// <exception cref="TraceFault">There are too many pieces, or a place is not finite or too far away.</exception>
    internal void Add(
        IReadOnlyList<Piece> drawn,
        bool isClosed,
        Affine map,
        string name,
        int line,
        int column
    )
    {
        pieces += drawn.Sum(piece => piece is PointsPiece points ? points.Places.Length : 1);
        if (pieces > TraceLimits.MaxPieces)
        {
            throw new TraceFault(
                File,
                line,
                column,
                "fault.too-many-pieces",
                TraceLimits.MaxPieces
            );
        }

        List<Piece> kept = [];
        foreach (Piece each in drawn)
        {
            Piece piece = each.Under(map);
            if (!piece.IsFinite || !piece.IsWithin(TraceLimits.MaxCoordinate))
            {
                throw new TraceFault(File, line, column, "fault.far-away");
            }

            if (!IsEmpty(piece))
            {
                kept.Add(piece);
            }
        }

        if (kept.Count > 0)
        {
            curves.Add(new TracedCurve(kept, isClosed, name, line, column));
        }
    }

    private static bool IsEmpty(Piece piece) =>
        piece is LinePiece line ? line.From == line.To
        : piece is RoundPiece arc ? arc.Sweep == 0 || (arc.U.Length == 0 && arc.V.Length == 0)
        : piece is CubicPiece cubic
            && cubic.Curve.P0 == cubic.Curve.P3
            && cubic.Curve.P0 == cubic.Curve.P1
            && cubic.Curve.P0 == cubic.Curve.P2;
}
