using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Joining;

/// <summary>Which of a file's curves is the outline: the largest that is no frame, no straight line and, if there is a choice, no circle.</summary>
internal static class OutlineChoice
{
    internal static Trail? Of(IReadOnlyList<TracedCurve> joined, Sampler sampler)
    {
        Trail? best = null;
        Trail? circle = null;
        foreach (TracedCurve curve in joined)
        {
            if (curve.Pieces.Count == 1 && curve.Pieces[0] is LinePiece)
            {
                continue;
            }

            if (
                curve.IsClosed
                && curve.Pieces.Count is > 2 and <= 4
                && curve.Pieces.All(piece => piece is LinePiece)
            )
            {
                continue;
            }

            Trail trail = sampler.Of(
                curve.Pieces,
                curve.IsClosed,
                curve.Name,
                curve.Line,
                curve.Column
            );
            if (
                curve.Pieces is [RoundPiece { RadiusMm: > 0 } round]
                && Math.Abs(round.Sweep) > 6.28
            )
            {
                circle = Larger(circle, trail);
            }
            else
            {
                best = Larger(best, trail);
            }
        }

        return best ?? circle;
    }

    private static Trail Larger(Trail? one, Trail other) =>
        one is null || other.DiagonalMm > one.DiagonalMm ? other : one;
}
