using System.Runtime.InteropServices;
using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>The points of one half, gathered into stations along a curve that follows them, bumps and all.</summary>
/// <param name="Curve">A curve that follows all waves longer than about <see cref="FollowMm"/>.</param>
/// <param name="Stations">One for each step of the curve that has points.</param>
/// <param name="PointNoiseMm">Standard deviation of a point across the curve, mm.</param>
/// <param name="StationNoiseMm">Standard deviation of a station, mm.</param>
internal sealed record FollowedHalf(
    GridCurve Curve,
    Station[] Stations,
    double PointNoiseMm,
    double StationNoiseMm
)
{
    /// <summary>Half of a wave of this length is followed, mm.</summary>
    internal const double FollowMm = 45;

    /// <summary>Fewest points that make half an outline.</summary>
    internal const int FewestPoints = 12;

    /// <summary>Step of a curve, mm, for a body of the usual size.</summary>
    private const double StepMm = 2;

    /// <summary>Follows the points of a half from heel to tail; null when they do not make a curve.</summary>
    /// <param name="points">In order, y ≥ 0 but for noise.</param>
    internal static FollowedHalf? Of(ReadOnlySpan<Point> points)
    {
        if (points.Length < FewestPoints || Start(points) is not { } curve)
        {
            return null;
        }

        Station[] stations = Fairing.Stations.Of(curve, points);
        for (int pass = 0; pass < 2; pass++)
        {
            if (Settling.Onto(curve, [stations], FollowMm, Shape.None, 6) is not { } followed)
            {
                return null;
            }

            curve = followed;
            stations = Fairing.Stations.Of(curve, points);
        }

        return new FollowedHalf(
            curve,
            stations,
            Scatter.Of(Fairing.Stations.Feet(curve, points)),
            Scatter.Of(Settling.Feet(curve, stations))
        );
    }

    /// <summary>A first curve through means of neighbouring points.</summary>
    private static GridCurve? Start(ReadOnlySpan<Point> points)
    {
        // In long strides noise adds next to nothing to the length.
        double length = 0;
        int stride = Math.Max(1, points.Length / 100);
        for (int i = stride; i < points.Length; i += stride)
        {
            length += points[i].DistanceTo(points[i - stride]);
        }

        double group = length / 100;
        List<Point> means = [points[0] with { Y = 0 }];
        int from = 0;
        for (int i = 1; i <= points.Length; i++)
        {
            if (i < points.Length && points[i].DistanceTo(points[from]) <= group)
            {
                continue;
            }

            Vector sum = default;
            foreach (Point point in points[from..i])
            {
                sum += point - points[from];
            }

            Point mean = points[from] + (sum * (1.0 / (i - from)));
            // Means that crowd the centreline would bend the start.
            if (mean.Y > 0.3 * group && mean.DistanceTo(means[^1]) > 0.3 * group)
            {
                means.Add(mean);
            }

            from = i;
        }

        means.Add(points[^1] with { Y = 0 });
        if (means.Count < 6 || !(length > 0))
        {
            return null;
        }

        int steps = Math.Clamp((int)Math.Round(length / StepMm), 120, 1200);
        return GridCurve.Through(CollectionsMarshal.AsSpan(means), steps);
    }
}
