using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Tests;

/// <summary>Makes traces of known outlines: sampled, shaken, with bumps, turned and moved. The fuzzer uses it, too.</summary>
internal static class ShakenOutline
{
    /// <summary>The features of the three invented models (design.md, section 4).</summary>
    internal static readonly Dictionary<string, OutlineFeatures> Models = new()
    {
        ["heron"] = new(488, new(104, 282), new(190, 236), new(356, 368)),
        ["dunlin"] = new(462, new(99, 262), new(180, 220), new(337, 342)),
        ["plover"] = new(412, new(88, 238), new(160, 200), new(300, 308)),
    };

    /// <summary>Normal noise, Box and Muller.</summary>
    internal static double Noise(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()))
        * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>Points along a half, with noise in both directions and raised-cosine bumps across.</summary>
    internal static Point[] Half(
        Chain half,
        double stepMm,
        double noiseMm,
        Random random,
        params (double ArcMm, double LengthMm, double HeightMm)[] bumps
    )
    {
        int count = (int)(half.LengthMm / stepMm);
        Point[] points = new Point[count + 1];
        for (int i = 0; i <= count; i++)
        {
            double s = half.LengthMm * i / count;
            CurvePoint at = half.At(s);
            double off = 0;
            foreach ((double arc, double length, double height) in bumps)
            {
                double share = (s - arc) / length;
                off += Math.Abs(share) < 0.5 ? height / 2 * (1 + Math.Cos(2 * Math.PI * share)) : 0;
            }

            points[i] =
                at.Position
                + (at.Normal * off)
                + new Vector(noiseMm * Noise(random), noiseMm * Noise(random));
        }

        return points;
    }

    /// <summary>A whole outline as a file of points: turned, moved and scaled.</summary>
    internal static TraceFile Whole(
        Point[] treble,
        Point[] bass,
        double turn = 0,
        double scale = 1,
        double dx = 0,
        double dy = 0
    )
    {
        List<Point> points = [.. treble];
        points.AddRange(bass.Reverse().Skip(1).SkipLast(1).Select(p => p with { Y = -p.Y }));
        Affine map = Affine.Move(dx, dy).After(Affine.Turn(turn)).After(Affine.Scale(scale, scale));
        return OfPoints([.. points.Select(map.Of)], isClosed: true);
    }

    internal static TraceFile OfPoints(Point[] points, bool isClosed) =>
        new(
            "points.csv",
            TraceLayout.Drawing,
            new TraceUnit(1, true, "unit.csv"),
            [new TracedCurve([new PointsPiece(points)], isClosed, "", 1, 1)],
            []
        );
}
