using Formwright.Curves;

namespace Formwright.Trace.Tests;

/// <summary>An invented outline of five tangent arcs, as drawn with a compass.</summary>
internal static class ArcOutline
{
    private static readonly double[] Radii = [350, 95, -110, 165, 400];
    private static readonly double[] Degrees = [12, 100, -62];

    /// <summary>The arc of the lower bout takes what closes the outline on the centreline.</summary>
    internal static Outline Make()
    {
        double low = 60;
        double high = 129;
        for (int i = 0; i < 200; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Half(middle).End.Position.Y > 0 ? (low, middle) : (middle, high);
        }

        return new Outline(Half(0.5 * (low + high)));
    }

    private static Chain Half(double lower)
    {
        double[] turns = [.. Degrees, lower, 180 - Degrees.Sum() - lower];
        List<EulerSegment> segments = [];
        CurvePoint at = new(Point.Origin, 0.5 * Math.PI, 0);
        for (int i = 0; i < turns.Length; i++)
        {
            double length = Math.Abs(Radii[i] * turns[i] * Math.PI / 180);
            segments.Add(new EulerSegment(at.Position, at.Angle, -1 / Radii[i], 0, length));
            at = segments[^1].End;
        }

        return new Chain(segments);
    }
}
