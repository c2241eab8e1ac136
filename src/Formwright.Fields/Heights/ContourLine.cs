using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>Makes contours of one height out of the grid edges that they cross.</summary>
internal sealed class ContourLine(
    IHeightField field,
    double height,
    double toleranceMm,
    double stepMm
)
{
    private const int RootSteps = 80;
    private const int NewtonSteps = 8;
    private const int MostHalvings = 8;

    /// <summary>Points nearer together than this part of the step are one (tuned).</summary>
    private const double Together = 1e-3;

    internal IEnumerable<Contour> Through(List<(Point Higher, Point Lower)> edges)
    {
        var points = new List<Point?>(edges.Count);
        foreach ((Point higher, Point lower) in edges)
        {
            points.Add(OnEdge(higher, lower));
        }
        int gap = points.IndexOf(null);
        if (gap < 0)
        {
            yield return Refined([.. points.Select(place => place!.Value)], closed: true);
            yield break;
        }
        // Where the field ends between the nodes there is no point on the height: the line is open there.
        var run = new List<Point>();
        for (int i = 1; i <= points.Count; i++)
        {
            if (points[(gap + i) % points.Count] is Point place)
            {
                run.Add(place);
                continue;
            }
            if (run.Count > 1)
            {
                yield return Refined(run, closed: false);
            }
            run = [];
        }
    }

    /// <summary>The place on the height between two places on either side of it (false position, Illinois); null at a jump.</summary>
    private Point? OnEdge(Point higher, Point lower)
    {
        double a = 0;
        double b = 1;
        double fa = field.HeightAt(higher) - height;
        double fb = field.HeightAt(lower) - height;
        double range = fa - fb;
        int side = 0;
        for (int i = 0; i < RootSteps && b - a > 1e-9; i++)
        {
            // Every third step halves, so that a jump is closed in on as well.
            double t = i % 3 == 2 ? (a + b) / 2 : a + ((b - a) * (fa / (fa - fb)));
            Point place = higher.Towards(lower, t);
            double f = field.HeightAt(place) - height;
            if (Math.Abs(f) <= 1e-13 * range)
            {
                return place;
            }
            if (f > 0)
            {
                (a, fa) = (t, f);
                fb = side > 0 ? fb / 2 : fb;
                side = 1;
            }
            else
            {
                (b, fb) = (t, f);
                fa = side < 0 ? fa / 2 : fa;
                side = -1;
            }
        }
        Point end = higher.Towards(lower, a);
        double jump = field.HeightAt(end) - field.HeightAt(higher.Towards(lower, b));
        return jump > 1e-6 * range ? null : end;
    }

    private Contour Refined(List<Point> rough, bool closed)
    {
        var apart = new List<Point>(rough.Count);
        foreach (Point place in rough)
        {
            if (apart.Count == 0 || apart[^1].DistanceTo(place) > Together * stepMm)
            {
                apart.Add(place);
            }
        }
        while (closed && apart.Count > 3 && apart[^1].DistanceTo(apart[0]) <= Together * stepMm)
        {
            apart.RemoveAt(apart.Count - 1);
        }
        var fine = new List<Point>(apart.Count * 2);
        double largest = 0;
        for (int i = 0; i < apart.Count; i++)
        {
            fine.Add(apart[i]);
            if (closed || i + 1 < apart.Count)
            {
                Divide(apart[i], apart[(i + 1) % apart.Count], MostHalvings, fine, ref largest);
            }
        }
        return new(height, fine, closed, largest);
    }

    private void Divide(Point a, Point b, int halvings, List<Point> into, ref double largest)
    {
        Point middle = a.Towards(b, 0.5);
        Point? onLine = Projected(middle, a.DistanceTo(b));
        // Without a foot on the line nothing better is known than the length of the piece.
        double deviation = onLine?.DistanceTo(middle) ?? a.DistanceTo(b);
        if (deviation <= toleranceMm || halvings == 0 || onLine is not Point place)
        {
            largest = Math.Max(largest, deviation);
            return;
        }
        Divide(a, place, halvings - 1, into, ref largest);
        into.Add(place);
        Divide(place, b, halvings - 1, into, ref largest);
    }

    /// <summary>The place on the height straight uphill or downhill of another, if it is found within a distance.</summary>
    private Point? Projected(Point start, double withinMm)
    {
        Point place = start;
        for (int i = 0; i < NewtonSteps; i++)
        {
            HeightSample here = field.At(place);
            double slope = here.Slope.Dot(here.Slope);
            if (!(slope > 0))
            {
                return null;
            }
            Vector step = here.Slope * ((height - here.HeightMm) / slope);
            place += step;
            if (!(place.DistanceTo(start) <= withinMm))
            {
                return null;
            }
            if (step.Length < 1e-9 * stepMm)
            {
                return place;
            }
        }
        return place;
    }
}
