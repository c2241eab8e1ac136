using Formwright.Curves;

namespace Formwright.Jigs.Mould;

/// <summary>
/// How far a half can move in its dowels. Each of the outermost two dowels can move by half its play in any direction; their distance
/// stays the same. So the half shifts along their line, and shifts or turns across it.
/// </summary>
/// <param name="SpacingMm">Distance of the outermost two dowels, mm.</param>
/// <param name="ClearanceMm">Play of a dowel in its hole, across, mm.</param>
/// <param name="TurnRad">Greatest turn, rad.</param>
/// <param name="FarEndMm">Greatest move of any place of the inner face, mm.</param>
/// <param name="FarEnd">That place, workboard frame, bass side.</param>
public sealed record DowelPlay(
    double SpacingMm,
    double ClearanceMm,
    double TurnRad,
    double FarEndMm,
    Point FarEnd
)
{
    private const int Steps = 90;

    /// <summary>The play of a half.</summary>
    /// <param name="first">One of the outermost dowels.</param>
    /// <param name="last">The other.</param>
    /// <param name="clearanceMm">Play of a dowel, across, mm.</param>
    /// <param name="face">Places of the inner face.</param>
    public static DowelPlay Of(Point first, Point last, double clearanceMm, IEnumerable<Point> face)
    {
        ArgumentNullException.ThrowIfNull(face);
        Vector line = last - first;
        double spacing = line.Length;
        double far = 0;
        Point at = first;
        foreach (Point place in face)
        {
            Vector from = place - first;
            double along = from.Dot(line) / (spacing * spacing);
            double across = line.Cross(from) / (spacing * spacing);
            double moved = MoveMm(clearanceMm / 2, along, across);
            (far, at) = moved > far ? (moved, place) : (far, at);
        }

        return new DowelPlay(spacing, clearanceMm, clearanceMm / spacing, far, at);
    }

    // Both dowels move by p along their line and by q1, q2 across it, p² + q² at most the square of the radius of play. A place at
    // (a, b) of their distance moves by p - b (q2 - q1) along and (1 - a) q1 + a q2 across.
    private static double MoveMm(double radius, double a, double b)
    {
        double most = 0;
        for (int i = 0; i <= Steps; i++)
        {
            (double q, double p) = Math.SinCos(Math.PI / 2 * i / Steps);
            double slide = radius * p;
            double side = radius * q;
            double turned = Math.Abs(b) * 2 * side;
            double opposed = Math.Abs(1 - (2 * a)) * side;
            most = Math.Max(most, Math.Sqrt(Square(slide + turned) + Square(opposed)));
            most = Math.Max(most, Math.Sqrt(Square(slide) + Square(side)));
        }

        return most;
    }

    private static double Square(double value) => value * value;
}
