using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>Cuts loops at a straight line across and closes the parts along the line.</summary>
internal static class StraightCut
{
    /// <summary>What lies at x ≥ <paramref name="x"/> of loops that run counter-clockwise outside and clockwise in holes.</summary>
    /// <exception cref="ArgumentException">Nothing lies there.</exception>
    internal static List<IReadOnlyList<Point>> BeyondX(
        IReadOnlyList<IReadOnlyList<Point>> loops,
        double x
    )
    {
        var whole = new List<IReadOnlyList<Point>>();
        var pieces = new List<List<Point>>();
        foreach (IReadOnlyList<Point> loop in loops)
        {
            int outside = Enumerable.Range(0, loop.Count).FirstOrDefault(i => loop[i].X < x, -1);
            if (outside < 0)
            {
                whole.Add(loop);
            }
            else
            {
                AddPieces(loop, outside, x, pieces);
            }
        }
        whole.AddRange(Joined(pieces));
        return whole.Count > 0
            ? whole
            : throw new ArgumentException(
                FormattableString.Invariant($"Nothing of the region lies beyond x = {x} mm."),
                nameof(x)
            );
    }

    private static void AddPieces(
        IReadOnlyList<Point> loop,
        int start,
        double x,
        List<List<Point>> pieces
    )
    {
        List<Point>? piece = null;
        for (int step = 1; step <= loop.Count; step++)
        {
            Point before = loop[(start + step - 1) % loop.Count];
            Point here = loop[(start + step) % loop.Count];
            if (here.X > x)
            {
                piece ??= [OnLine(before, here, x)];
                piece.Add(here);
            }
            else if (piece is not null)
            {
                piece.Add(OnLine(before, here, x));
                pieces.Add(piece);
                piece = null;
            }
        }
    }

    private static IEnumerable<List<Point>> Joined(List<List<Point>> pieces)
    {
        // Along the line inside and outside alternate: ends pair up in order of y, the lower one entering (the inside lies
        // to the left), the upper one leaving.
        (double Y, int Piece, bool Enters)[] ends =
        [
            .. pieces
                .SelectMany(
                    (piece, i) =>
                        new[]
                        {
                            (piece[0].Y, Piece: i, Enters: true),
                            (piece[^1].Y, Piece: i, Enters: false),
                        }
                )
                .OrderBy(end => end.Y),
        ];
        var follower = new int[pieces.Count];
        for (int i = 0; i + 1 < ends.Length; i++)
        {
            bool enters = i % 2 == 0;
            if (ends[i].Enters != enters && ends[i + 1].Y == ends[i].Y)
            {
                (ends[i], ends[i + 1]) = (ends[i + 1], ends[i]);
            }
            if (ends[i].Enters != enters)
            {
                throw new ArgumentException(
                    "The line touches a corner of the region; move it a little."
                );
            }
            if (!enters)
            {
                follower[ends[i].Piece] = ends[i - 1].Piece;
            }
        }
        if (ends.Length > 0)
        {
            follower[ends[^1].Piece] = ends[^2].Piece;
        }
        var used = new bool[pieces.Count];
        for (int i = 0; i < pieces.Count; i++)
        {
            var loop = new List<Point>();
            for (int k = i; !used[k]; k = follower[k])
            {
                used[k] = true;
                loop.AddRange(pieces[k]);
            }
            if (loop.Count > 0)
            {
                yield return loop;
            }
        }
    }

    private static Point OnLine(Point a, Point b, double x)
    {
        double share = (x - a.X) / (b.X - a.X);
        return new(x, a.Y + ((b.Y - a.Y) * share));
    }
}
