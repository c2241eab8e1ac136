using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Parallel lines inside closed loops, by the even-odd rule on chords within 0.02 mm of the loops.</summary>
internal static class Hatching
{
    private const double ChordMm = 0.02;

    public static IEnumerable<Shape> Lines(
        IReadOnlyList<Shape> loops,
        double degrees,
        double spacingMm
    )
    {
        if (!(spacingMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(spacingMm));
        }

        Vector along = Vector.At(degrees * Math.PI / 180);
        Vector across = along.Left;
        SortedDictionary<int, List<double>> crossings = [];
        foreach (Shape loop in loops)
        {
            IReadOnlyList<Point> points = loop.Flatten(ChordMm);
            for (int i = 0; i < points.Count; i++)
            {
                Cross(points[i], points[(i + 1) % points.Count]);
            }
        }

        foreach ((int row, List<double> cuts) in crossings)
        {
            cuts.Sort();
            Point origin = Point.Origin + (row * spacingMm * across);
            for (int k = 0; k + 1 < cuts.Count; k += 2)
            {
                if (cuts[k + 1] - cuts[k] > 0.1)
                {
                    yield return Shape.Line(
                        origin + (cuts[k] * along),
                        origin + (cuts[k + 1] * along)
                    );
                }
            }
        }

        void Cross(Point a, Point b)
        {
            Vector va = a - Point.Origin;
            Vector vb = b - Point.Origin;
            double sa = va.Dot(across) / spacingMm;
            double sb = vb.Dot(across) / spacingMm;
            // Half-open, so that a vertex on a row counts once.
            int first = (int)Math.Ceiling(Math.Min(sa, sb));
            int last = (int)Math.Ceiling(Math.Max(sa, sb)) - 1;
            for (int row = first; row <= last; row++)
            {
                double t = (row - sa) / (sb - sa);
                if (!crossings.TryGetValue(row, out List<double>? cuts))
                {
                    crossings[row] = cuts = [];
                }

                cuts.Add(va.Dot(along) + (t * (vb - va).Dot(along)));
            }
        }
    }
}
