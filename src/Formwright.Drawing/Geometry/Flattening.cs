using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Turns cubics into chords.</summary>
internal static class Flattening
{
    /// <summary>
    /// Even steps in the parameter. A chord over a step h leaves the curve by at most h²/8·max|P''|, and
    /// |P''| ≤ 6·max(|P0-2P1+P2|, |P1-2P2+P3|), so n² = (6/8)·max(…)/ε steps are enough.
    /// </summary>
    public static void Cubic(Point start, CubicSegment c, double toleranceMm, List<Point> points)
    {
        CubicBezier curve = new(start, c.Control1, c.Control2, c.End);
        double d1 = ((c.Control2 - c.Control1) - (c.Control1 - start)).Length;
        double d2 = ((c.End - c.Control2) - (c.Control2 - c.Control1)).Length;
        double n = Math.Ceiling(Math.Sqrt(0.75 * Math.Max(d1, d2) / toleranceMm));
        int count = (int)Math.Clamp(n, 1, 100_000);
        for (int i = 1; i < count; i++)
        {
            points.Add(curve.At((double)i / count));
        }

        points.Add(c.End);
    }
}
