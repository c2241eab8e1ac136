using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// Checks a membrane by what the true one must do, without its grid, its equations or its solver: mean values on circles,
/// the flux through the edge, the maximum principle, symmetry.
/// </summary>
public static class MembraneValidator
{
    private const int PlacesAcross = 15;
    private const int CirclePoints = 48;

    /// <summary>Circles reach this part of the way to the edge.</summary>
    private const double CircleShare = 0.8;

    public static MembraneCheck Check(MembraneSolution membrane)
    {
        ArgumentNullException.ThrowIfNull(membrane);
        Region region = membrane.Region;
        HeightField u = membrane.Field;
        double most = u.Peak.HeightMm;
        double meanValue = 0;
        double negative = 0;
        double mirror = 0;
        double aboveFloor = double.PositiveInfinity;
        bool symmetric = IsMirrored(region);
        foreach (Point place in Places(region))
        {
            double height = u.HeightAt(place);
            double radius = EdgeDistance(region, place);
            meanValue = Math.Max(
                meanValue,
                Math.Abs(CircleMean(u, place, radius * CircleShare) - height)
            );
            negative = Math.Max(negative, -height);
            // Nearer to the edge than a step a polyline's corner weighs more than the field.
            if (radius > membrane.StepMm)
            {
                aboveFloor = Math.Min(aboveFloor, height / (radius * radius / 4));
            }
            mirror = Math.Max(mirror, Math.Abs(u.HeightAt(new(place.X, -place.Y)) - height));
        }
        (double flux, double edge) = AlongEdge(region, u);
        return new(
            meanValue / most,
            Math.Abs(flux - region.AreaMm2) / region.AreaMm2,
            edge / most,
            negative / most,
            symmetric ? mirror / most : null,
            aboveFloor,
            most / (region.AreaMm2 / (4 * Math.PI))
        );
    }

    /// <summary>Mean of u + r²/4 on a circle: u in its middle.</summary>
    private static double CircleMean(HeightField u, Point middle, double radius)
    {
        double sum = 0;
        for (int i = 0; i < CirclePoints; i++)
        {
            sum += u.HeightAt(middle + (radius * Vector.At(2 * Math.PI * i / CirclePoints)));
        }
        return (sum / CirclePoints) + (radius * radius / 4);
    }

    /// <summary>-∮∂u/∂n ds by one-sided differences inward (u = 0 on the edge), and the largest |u| on the edge.</summary>
    private static (double Flux, double Edge) AlongEdge(Region region, HeightField u)
    {
        double step = u.StepMm;
        double flux = 0;
        double edge = 0;
        foreach (IReadOnlyList<Point> loop in region.Loops)
        {
            for (int i = 0; i < loop.Count; i++)
            {
                Point a = loop[i];
                Point b = loop[(i + 1) % loop.Count];
                double length = a.DistanceTo(b);
                // The region lies to the left of each edge.
                Vector inward = ((b - a) * (1 / length)).Left;
                int pieces = (int)Math.Ceiling(length / step);
                for (int k = 0; k < pieces; k++)
                {
                    Point place = a.Towards(b, (k + 0.5) / pieces);
                    double near = u.HeightAt(place + (inward * step));
                    double far = u.HeightAt(place + (inward * (2 * step)));
                    flux += ((4 * near) - far) / (2 * step) * (length / pieces);
                    edge = Math.Max(edge, Math.Abs(u.Spline(place).HeightMm));
                }
            }
        }
        return (flux, edge);
    }

    private static IEnumerable<Point> Places(Region region)
    {
        Box bounds = region.Bounds;
        for (int row = 0; row < PlacesAcross; row++)
        {
            for (int column = 0; column < PlacesAcross; column++)
            {
                Point place = new(
                    bounds.Min.X + (bounds.WidthMm * (column + 0.5) / PlacesAcross),
                    bounds.Min.Y + (bounds.HeightMm * (row + 0.5) / PlacesAcross)
                );
                if (region.Contains(place))
                {
                    yield return place;
                }
            }
        }
    }

    /// <summary>Whether mirrored corners lie on the edge again; of a long loop some are looked at.</summary>
    private static bool IsMirrored(Region region)
    {
        double allowed = region.SagittaMm + (1e-9 * region.PerimeterMm);
        return region.Loops.All(loop =>
            Enumerable
                .Range(0, Math.Min(loop.Count, 100))
                .Select(i => loop[(int)((long)i * loop.Count / Math.Min(loop.Count, 100))])
                .All(place => EdgeDistance(region, new(place.X, -place.Y)) <= allowed)
        );
    }

    private static double EdgeDistance(Region region, Point place)
    {
        double nearest = double.PositiveInfinity;
        foreach (IReadOnlyList<Point> loop in region.Loops)
        {
            for (int i = 0; i < loop.Count; i++)
            {
                Point a = loop[i];
                Vector along = loop[(i + 1) % loop.Count] - a;
                double share = Math.Clamp((place - a).Dot(along) / along.Dot(along), 0, 1);
                nearest = Math.Min(nearest, place.DistanceTo(a + (along * share)));
            }
        }
        return nearest;
    }
}
