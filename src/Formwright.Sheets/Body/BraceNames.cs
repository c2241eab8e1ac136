using Formwright.Curves;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Sheets.Body;

/// <summary>Where the name of a brace stands: along it, where no other brace crosses.</summary>
internal static class BraceNames
{
    // Half a name and the room around it, mm.
    private const double RoomMm = 5;

    /// <summary>A place on the brace and the brace's direction there, body frame.</summary>
    public static (Point At, Vector Along) Of(Brace brace, IReadOnlyList<Brace> all)
    {
        // From the end that is nearer the tail; a harmonic bar, which lies across, from its bass end.
        IReadOnlyList<Point> line = brace.Line;
        (Point from, Point to) =
            line[0].X <= line[^1].X && brace.Kind != BraceKind.HarmonicBar
                ? (line[^1], line[0])
                : (line[0], line[^1]);
        double[] shares =
            brace.Kind == BraceKind.ClosingBar ? [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9]
            : brace.Kind == BraceKind.HarmonicBar ? [0.28, 0.2, 0.36, 0.14, 0.1]
            : [0.3, 0.38, 0.22, 0.46, 0.54, 0.62, 0.7, 0.78, 0.86, 0.14, 0.08];
        Brace[] others = [.. all.Where(other => other != brace)];
        Point at = Best(shares.Select(share => from.Towards(to, share)), others);
        return (at, (to - from) * (1 / from.DistanceTo(to)));
    }

    // The first with room enough, else the one with the most.
    private static Point Best(IEnumerable<Point> places, Brace[] others)
    {
        (Point Place, double Free)[] ranked = [.. places.Select(place => (place, Free(place)))];
        return ranked.Any(each => each.Free >= RoomMm)
            ? ranked.First(each => each.Free >= RoomMm).Place
            : ranked.MaxBy(each => each.Free).Place;

        double Free(Point place) =>
            others
                .SelectMany(other =>
                    Enumerable
                        .Range(1, other.Line.Count - 1)
                        .Select(i =>
                            Distance(place, other.Line[i - 1], other.Line[i])
                            - (other.Shape.WidthMm / 2)
                        )
                )
                .DefaultIfEmpty(double.PositiveInfinity)
                .Min();
    }

    private static double Distance(Point place, Point a, Point b)
    {
        Vector run = b - a;
        double length = run.Dot(run);
        double share = length > 0 ? Math.Clamp((place - a).Dot(run) / length, 0, 1) : 0;
        return place.DistanceTo(a + (share * run));
    }
}
