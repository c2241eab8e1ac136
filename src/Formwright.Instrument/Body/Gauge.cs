using Formwright.Curves;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body;

/// <summary>The curve that the glued edge of a bar or brace must have: a surface sampled along a line, over the chord of its ends.</summary>
/// <param name="Points">Samples from end to end.</param>
/// <param name="LengthMm">Length along the line, mm.</param>
/// <param name="TiltMm">How much the far end stands over the near one, mm.</param>
/// <param name="MostMm">Largest rise over the chord, mm (the largest hollow, if it is larger, as a negative number).</param>
/// <param name="MostAtMm">Where it is, from the start, mm.</param>
public sealed record Gauge(
    IReadOnlyList<GaugePoint> Points,
    double LengthMm,
    double TiltMm,
    double MostMm,
    double MostAtMm
)
{
    /// <summary>Distance of samples, mm: a parabola through three of a radius of 1 m misses by under 0.001 mm.</summary>
    public const double StepMm = 2;

    /// <summary>Radius of the arc over the chord with the same largest rise, mm; infinite for straight. A dome is no arc: use the samples.</summary>
    public double MeanRadiusMm =>
        Math.Abs(MostMm) < 1e-9 || Math.Abs(MostMm) > LengthMm / 2
            ? double.PositiveInfinity
            : Sagitta.Radius(MostMm, LengthMm);

    /// <summary>Rise at a place along the line, mm, linear between samples.</summary>
    public double RiseAt(double alongMm)
    {
        double place = Math.Clamp(alongMm / LengthMm, 0, 1) * (Points.Count - 1);
        int i = Math.Min((int)place, Points.Count - 2);
        double share = place - i;
        return (Points[i].RiseMm * (1 - share)) + (Points[i + 1].RiseMm * share);
    }

    /// <summary>The gauge of a surface along a line of straight pieces.</summary>
    /// <param name="height">Height of the surface at a place, towards the outside of the box, mm.</param>
    /// <param name="line">Its places in order, at least two, all different.</param>
    public static Gauge Of(Func<Point, double> height, IReadOnlyList<Point> line)
    {
        ArgumentNullException.ThrowIfNull(height);
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfLessThan(line.Count, 2, nameof(line));
        double length = 0;
        for (int i = 1; i < line.Count; i++)
        {
            length += Guard.Positive(line[i - 1].DistanceTo(line[i]), nameof(line));
        }

        // An even count, so that the middle is a sample.
        int steps = 2 * Math.Clamp((int)Math.Ceiling(length / (2 * StepMm)), 2, 1000);
        double[] heights = new double[steps + 1];
        int piece = 0;
        double before = 0;
        for (int i = 0; i <= steps; i++)
        {
            double along = length * i / steps;
            double here = line[piece].DistanceTo(line[piece + 1]);
            while (piece < line.Count - 2 && along > before + here)
            {
                before += here;
                piece++;
                here = line[piece].DistanceTo(line[piece + 1]);
            }

            heights[i] = height(line[piece].Towards(line[piece + 1], (along - before) / here));
        }

        double tilt = heights[steps] - heights[0];
        GaugePoint[] points = new GaugePoint[steps + 1];
        int most = 0;
        for (int i = 0; i <= steps; i++)
        {
            double chord = heights[0] + (tilt * i / steps);
            points[i] = new GaugePoint(length * i / steps, heights[i] - chord);
            most = Math.Abs(points[i].RiseMm) > Math.Abs(points[most].RiseMm) ? i : most;
        }

        return new Gauge(points, length, tilt, points[most].RiseMm, points[most].AlongMm);
    }
}
