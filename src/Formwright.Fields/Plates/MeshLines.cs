using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Lines that a mesh should follow, cut where they cross each other and the rim.</summary>
internal sealed class MeshLines
{
    private readonly List<(Point From, Point To)> pieces = [];
    private readonly List<List<double>> cuts = [];

    internal MeshLines(IEnumerable<IReadOnlyList<Point>> lines)
    {
        foreach (IReadOnlyList<Point> line in lines)
        {
            for (int i = 0; i + 1 < line.Count; i++)
            {
                if (line[i].DistanceTo(line[i + 1]) > 0)
                {
                    pieces.Add((line[i], line[i + 1]));
                    cuts.Add([0, 1]);
                }
            }
        }

        for (int i = 0; i < pieces.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (Crossing(pieces[i], pieces[j]) is (double own, double other))
                {
                    cuts[i].Add(own);
                    cuts[j].Add(other);
                }
            }
        }
    }

    internal IReadOnlyList<(Point From, Point To)> Pieces => pieces;

    /// <summary>Shares of a piece at its ends and crossings, ascending.</summary>
    internal IEnumerable<double> Cuts(int piece) => cuts[piece].Distinct().Order();

    /// <summary>Shares of a chord at which the lines cross it.</summary>
    internal IEnumerable<double> CrossingsOf(Point from, Point to)
    {
        foreach ((Point From, Point To) piece in pieces)
        {
            if (Crossing((from, to), piece) is (double share, _))
            {
                yield return share;
            }
        }
    }

    private static (double First, double Second)? Crossing(
        (Point From, Point To) first,
        (Point From, Point To) second
    )
    {
        Vector a = first.To - first.From;
        Vector b = second.To - second.From;
        double cross = a.Cross(b);
        if (Math.Abs(cross) < 1e-9 * a.Length * b.Length)
        {
            return null;
        }

        Vector apart = second.From - first.From;
        double own = apart.Cross(b) / cross;
        double other = apart.Cross(a) / cross;
        return own is >= 0 and <= 1 && other is >= 0 and <= 1 ? (own, other) : null;
    }
}
