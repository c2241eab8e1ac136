using Formwright.Curves;
using Formwright.Jigs.Stock;

namespace Formwright.Sheets.Cutting;

/// <summary>Where a number stands well inside a part, however it bends: of a grid of places the one furthest from any edge.</summary>
internal static class LabelPlace
{
    private const int Grid = 24;

    /// <summary>A place within the part, in the frame of its sheet.</summary>
    public static Point Within(PlacedPart placed)
    {
        Point[][] loops =
        [
            .. placed
                .Part.Insides.Prepend(placed.Part.Outside)
                .Select(loop => placed.Apply(loop))
                .Select(loop =>
                    loop.Pieces.SelectMany(piece => new[] { piece.At(0), piece.At(0.5) }).ToArray()
                ),
        ];
        Box box = loops[0].Aggregate(Box.Empty, (b, p) => b.With(p));
        Point best = box.Centre;
        double room = double.NegativeInfinity;
        for (int i = 1; i < Grid; i++)
        {
            for (int k = 1; k < Grid; k++)
            {
                Point at = new(
                    box.Min.X + (box.WidthMm * i / Grid),
                    box.Min.Y + (box.HeightMm * k / Grid)
                );
                double distance = Distance(loops, at);
                if (distance > room)
                {
                    (best, room) = (at, distance);
                }
            }
        }

        return best;
    }

    // To the nearest edge; negative outside.
    private static double Distance(Point[][] loops, Point at)
    {
        double least = double.PositiveInfinity;
        bool inside = false;
        foreach (Point[] loop in loops)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                Point a = loop[i];
                Point b = loop[(i + 1) % loop.Length];
                Vector edge = b - a;
                double along = edge.Dot(edge) is > 0 and var square
                    ? Math.Clamp((at - a).Dot(edge) / square, 0, 1)
                    : 0;
                least = Math.Min(least, at.DistanceTo(a.Towards(b, along)));
                if (
                    a.Y > at.Y != b.Y > at.Y
                    && at.X < a.X + ((at.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))
                )
                {
                    inside = !inside;
                }
            }
        }

        return inside ? least : -least;
    }
}
