using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Joining;

/// <summary>Turns pieces into points: dense on everything curved, the corners alone of straight lines and rows of points.</summary>
internal sealed class Sampler(string file)
{
    /// <summary>Largest distance between a curved piece and the chords of its points, mm.</summary>
    internal const double ToleranceMm = 0.005;

    /// <summary>Largest spacing of points on a curved piece, mm.</summary>
    internal const double SpacingMm = 1;

    private const int MostHalvings = 14;
    private int count;

    /// <summary>The points of a curve.</summary>
    /// <exception cref="TraceFault">There are more than <see cref="TraceLimits.MaxPoints"/>.</exception>
    internal Trail Of(IReadOnlyList<Piece> pieces, bool isClosed, string name, int line, int column)
    {
        List<Point> points = [];
        List<bool> straight = [];
        foreach (Piece piece in pieces)
        {
            Put(piece.Start, false);
            if (piece is LinePiece)
            {
                Put(piece.End, true);
                continue;
            }

            if (piece is PointsPiece row)
            {
                foreach (Point place in row.Places)
                {
                    Put(place, false);
                }

                continue;
            }

            int steps = piece.FirstSteps;
            Point before = piece.Start;
            for (int i = 1; i <= steps; i++)
            {
                Point after = piece.At((double)i / steps);
                Halve(piece, (double)(i - 1) / steps, (double)i / steps, before, after, 0);
                before = after;
            }
        }

        if (isClosed && points.Count > 1 && points[0].DistanceTo(points[^1]) < 1e-9)
        {
            straight[0] = straight[^1];
            points.RemoveAt(points.Count - 1);
            straight.RemoveAt(straight.Count - 1);
        }

        return new Trail([.. points], isClosed, [.. straight], name, line, column);

        void Put(Point place, bool isStraight)
        {
            // Places that repeat say nothing new.
            if (points.Count > 0 && points[^1].DistanceTo(place) < 1e-9)
            {
                return;
            }

            if (++count > TraceLimits.MaxPoints)
            {
                throw new TraceFault(
                    file,
                    line,
                    column,
                    "fault.too-many-points",
                    TraceLimits.MaxPoints
                );
            }

            points.Add(place);
            straight.Add(isStraight);
        }

        void Halve(Piece piece, double from, double to, Point a, Point b, int depth)
        {
            double middle = 0.5 * (from + to);
            Point m = piece.At(middle);
            double chord = a.DistanceTo(b);
            double off = m.DistanceTo(a.Towards(b, 0.5));
            if (depth < MostHalvings && (chord > SpacingMm || off > ToleranceMm))
            {
                Halve(piece, from, middle, a, m, depth + 1);
                Halve(piece, middle, to, m, b, depth + 1);
            }
            else
            {
                Put(b, false);
            }
        }
    }

    /// <summary>
    /// Puts points on lines that were drawn straight: those that are long beside the other chords, which a row of traced points never has.
    /// </summary>
    internal static Trail WithLinesFilled(Trail trail)
    {
        Point[] points = trail.Points;
        int first = trail.IsClosed ? 0 : 1;
        List<double> chords = [];
        for (int i = first; i < points.Length; i++)
        {
            chords.Add(points[i].DistanceTo(points[i > 0 ? i - 1 : ^1]));
        }

        if (chords.Count == 0)
        {
            return trail;
        }

        chords.Sort();
        double limit = Math.Max(8, 4 * chords[chords.Count / 2]);
        List<Point> filled = [];
        List<bool> straight = [];
        for (int i = 0; i < points.Length; i++)
        {
            if (i >= first && trail.IsStraight[i])
            {
                Point from = points[i > 0 ? i - 1 : ^1];
                double chord = from.DistanceTo(points[i]);
                if (chord > limit)
                {
                    int parts = (int)Math.Min(20_000, Math.Ceiling(chord / SpacingMm));
                    for (int k = 1; k < parts; k++)
                    {
                        filled.Add(from.Towards(points[i], (double)k / parts));
                        straight.Add(true);
                    }
                }
            }

            filled.Add(points[i]);
            straight.Add(trail.IsStraight[i]);
        }

        return trail with
        {
            Points = [.. filled],
            IsStraight = [.. straight],
        };
    }
}
