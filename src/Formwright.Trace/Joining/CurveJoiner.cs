using Formwright.Curves;
using Formwright.Trace.Files;

namespace Formwright.Trace.Joining;

/// <summary>Joins curves whose ends meet, so that an outline drawn in pieces becomes one curve.</summary>
internal sealed class CurveJoiner
{
    private const int MostPartners = 12;
    private readonly IReadOnlyList<TracedCurve> curves;
    private readonly double gapMm;
    private readonly (Point Place, Vector Outwards)[] ends;
    private readonly int[] partner;

    private CurveJoiner(IReadOnlyList<TracedCurve> curves, double gapMm)
    {
        this.curves = curves;
        this.gapMm = gapMm;
        ends = new (Point, Vector)[2 * curves.Count];
        partner = new int[2 * curves.Count];
        Array.Fill(partner, -1);
        for (int i = 0; i < curves.Count; i++)
        {
            Geometry.Piece first = curves[i].Pieces[0];
            Geometry.Piece last = curves[i].Pieces[^1];
            ends[2 * i] = (first.Start, first.Start - first.At(0.01));
            ends[(2 * i) + 1] = (last.End, last.End - last.At(0.99));
        }
    }

    /// <summary>The curves, joined where ends are no farther apart than a gap; copies of the same curve count once.</summary>
    internal static IReadOnlyList<TracedCurve> Join(IReadOnlyList<TracedCurve> curves, double gapMm)
    {
        List<TracedCurve> joined = [];
        List<TracedCurve> open = [];
        HashSet<(double, double, double, double)> seen = [];
        foreach (TracedCurve curve in curves)
        {
            bool meets = curve.Pieces[0].Start.DistanceTo(curve.Pieces[^1].End) <= 1e-6;
            if (!IsNew(curve, seen))
            {
                continue;
            }

            if (curve.IsClosed || (meets && curve.Pieces.Count > 1))
            {
                joined.Add(curve with { IsClosed = true });
            }
            else
            {
                open.Add(curve);
            }
        }

        CurveJoiner joiner = new(open, gapMm);
        joiner.Pair();
        joined.AddRange(joiner.Chains());
        return joined;
    }

    private static bool IsNew(TracedCurve curve, HashSet<(double, double, double, double)> seen)
    {
        Point a = curve.Pieces[0].Start;
        Point b = curve.Pieces[^1].End;
        Point m = curve.Pieces[curve.Pieces.Count / 2].At(0.5);
        // The same either way round.
        return seen.Add(
            (
                Math.Round(a.X + b.X, 5),
                Math.Round(a.Y + b.Y, 5),
                Math.Round((m.X * 3) + (a.X * b.X), 4),
                Math.Round((m.Y * 3) + (a.Y * b.Y), 4)
            )
        );
    }

    /// <summary>Pairs ends, the nearest first; among equally near ones those that go on straight.</summary>
    private void Pair()
    {
        double cell = Math.Max(gapMm, 1e-6);
        Dictionary<(long, long), List<int>> cells = [];
        for (int e = 0; e < ends.Length; e++)
        {
            (long, long) key = Key(ends[e].Place, cell);
            if (!cells.TryGetValue(key, out List<int>? row))
            {
                cells[key] = row = [];
            }

            row.Add(e);
        }

        List<(double Far, double Turn, int A, int B)> pairs = [];
        for (int e = 0; e < ends.Length; e++)
        {
            (long cx, long cy) = Key(ends[e].Place, cell);
            int found = 0;
            for (long x = cx - 1; x <= cx + 1; x++)
            {
                for (long y = cy - 1; y <= cy + 1; y++)
                {
                    foreach (int other in cells.GetValueOrDefault((x, y)) ?? [])
                    {
                        double far = ends[e].Place.DistanceTo(ends[other].Place);
                        if (other > e && far <= gapMm && found++ < MostPartners)
                        {
                            pairs.Add((Math.Round(far, 5), Turn(e, other), e, other));
                        }
                    }
                }
            }
        }

        pairs.Sort();
        foreach ((_, _, int a, int b) in pairs)
        {
            if (partner[a] < 0 && partner[b] < 0)
            {
                partner[a] = b;
                partner[b] = a;
            }
        }
    }

    /// <summary>0 where two ends go on straight, 2 where they fold back.</summary>
    private double Turn(int a, int b)
    {
        Vector u = ends[a].Outwards;
        Vector v = ends[b].Outwards;
        double product = u.Length * v.Length;
        return product > 0 ? Math.Round(1 + (u.Dot(v) / product), 3) : 1;
    }

    private List<TracedCurve> Chains()
    {
        List<TracedCurve> chains = [];
        bool[] used = new bool[curves.Count];
        // Open chains start at ends without a partner; what is left are closed ones.
        for (int pass = 0; pass < 2; pass++)
        {
            for (int e = 0; e < ends.Length; e++)
            {
                if (!used[e / 2] && (pass == 1 || partner[e] < 0))
                {
                    chains.Add(Walk(e, used));
                }
            }
        }

        return chains;
    }

    private TracedCurve Walk(int start, bool[] used)
    {
        List<Geometry.Piece> pieces = [];
        int entry = start;
        while (true)
        {
            int i = entry / 2;
            used[i] = true;
            TracedCurve curve = entry % 2 == 0 ? curves[i] : curves[i].Reversed();
            if (pieces.Count > 0 && pieces[^1].End.DistanceTo(curve.Pieces[0].Start) > 1e-6)
            {
                pieces.Add(new Geometry.LinePiece(pieces[^1].End, curve.Pieces[0].Start));
            }

            pieces.AddRange(curve.Pieces);
            int next = partner[entry ^ 1];
            if (next < 0 || used[next / 2])
            {
                TracedCurve first = curves[start / 2];
                return new TracedCurve(pieces, next >= 0, first.Name, first.Line, first.Column);
            }

            entry = next;
        }
    }

    private static (long, long) Key(Point place, double cell) =>
        ((long)Math.Floor(place.X / cell), (long)Math.Floor(place.Y / cell));
}
