using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>An edge of the mesh on the rim or on a hole, the plate on its left.</summary>
/// <param name="From">Its first vertex.</param>
/// <param name="To">Its second vertex.</param>
/// <param name="IsHole">It belongs to a hole.</param>
public sealed record RimEdge(int From, int To, bool IsHole)
{
    private RimLoop? loop;
    private double start;
    private double end;

    /// <summary>The edge follows a curve between two of its arc lengths; without one it is straight.</summary>
    internal RimEdge On(RimLoop curve, double fromMm, double toMm) =>
        this with
        {
            loop = curve,
            start = fromMm,
            end = toMm,
        };

    internal bool IsCurved => loop is not null;

    /// <summary>Place and direction at a share of the edge, 0 at the first vertex, 1 at the second.</summary>
    internal (Point Position, Vector Tangent) At(double share, Point from, Point to)
    {
        if (loop is null)
        {
            Vector chord = to - from;
            return (from.Towards(to, share), chord * (1 / chord.Length));
        }

        return loop.At(start + (share * (end - start)), ahead: share < 1);
    }
}
