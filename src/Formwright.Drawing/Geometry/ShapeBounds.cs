using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>The box around a shape, from the ends of its pieces and the places where they run upright or level.</summary>
internal static class ShapeBounds
{
    public static Box Of(Shape shape)
    {
        Box box = Box.Empty.With(shape.Start);
        Point at = shape.Start;
        foreach (Segment segment in shape.Segments)
        {
            box = box.With(segment.End);
            if (segment is ArcSegment arc)
            {
                box = WithArc(box, ArcGeometry.Of(at, arc));
            }
            else if (segment is CubicSegment cubic)
            {
                box = WithCubic(box, new(at, cubic.Control1, cubic.Control2, cubic.End));
            }

            at = segment.End;
        }

        return box;
    }

    private static Box WithArc(Box box, ArcGeometry arc)
    {
        if (arc.IsStraight)
        {
            return box;
        }

        double low = Math.Min(arc.FromRad, arc.FromRad + arc.SweepRad);
        double high = Math.Max(arc.FromRad, arc.FromRad + arc.SweepRad);
        for (
            double quarter = Math.Ceiling(low / (Math.PI / 2));
            quarter * Math.PI / 2 <= high;
            quarter++
        )
        {
            box = box.With(arc.At(quarter * Math.PI / 2));
        }

        return box;
    }

    private static Box WithCubic(Box box, CubicBezier c)
    {
        if (box.Contains(c.P1) && box.Contains(c.P2))
        {
            return box;
        }

        foreach (double t in Level(c.P0.X, c.P1.X, c.P2.X, c.P3.X))
        {
            box = box.With(c.At(t));
        }

        foreach (double t in Level(c.P0.Y, c.P1.Y, c.P2.Y, c.P3.Y))
        {
            box = box.With(c.At(t));
        }

        return box;
    }

    /// <summary>Parameters inside (0, 1) where one coordinate of a cubic turns: roots of its derivative a t² + 2 b t + c.</summary>
    private static IEnumerable<double> Level(double p0, double p1, double p2, double p3)
    {
        double a = p3 - (3 * p2) + (3 * p1) - p0;
        double b = p2 - (2 * p1) + p0;
        double c = p1 - p0;
        double root = Math.Sqrt(Math.Max(0, (b * b) - (a * c)));
        // The form that does not cancel: q/a and c/q.
        double q = -(b + (b < 0 ? -root : root));
        double[] roots = [a == 0 ? -1 : q / a, q == 0 ? -1 : c / q];
        return roots.Where(t => t is > 0 and < 1);
    }
}
