using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;

namespace Formwright.Jigs.Workboard;

/// <summary>A grid of holes to drill to a depth stop; then the relief is carved until the holes vanish.</summary>
internal static class SpotPlan
{
    /// <summary>Shallower than this, a hole is no help, mm (common practice).</summary>
    private const double LeastMm = 0.3;

    private const int AroundCutter = 16;

    public static IReadOnlyList<Spot> Of(Guitar guitar, Relief relief)
    {
        if (relief.Method != ReliefMethod.Carved)
        {
            return [];
        }

        WorkboardDesign board = guitar.Design.Workboard;
        double step = board.SpotStepMm;
        Box box = relief.Shape.Region.Bounds;
        List<Spot> spots = [];
        // One row of the grid runs through the deepest place, one column along the centreline.
        double first =
            relief.Deepest.X - (Math.Floor((relief.Deepest.X - box.Min.X) / step) * step);
        int across = (int)Math.Floor(box.Max.Y / step);
        for (double u = first; u <= box.Max.X; u += step)
        {
            for (int j = -across; j <= across; j++)
            {
                double depth = Depth(relief, new Point(u, j * step), board.SpotDiameterMm / 2);
                double stop = Math.Floor((depth * 10) + 1e-9) / 10;
                if (stop >= LeastMm)
                {
                    spots.Add(new Spot(guitar.JoinMm + u, -j * step, stop));
                }
            }
        }

        return [.. spots.OrderBy(spot => spot.XMm).ThenBy(spot => spot.YBMm)];
    }

    // The least depth under the cutter.
    private static double Depth(Relief relief, Point centre, double radius)
    {
        double least = relief.Shape.HeightAt(centre);
        for (int i = 0; i < AroundCutter; i++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * i / AroundCutter);
            Point at = new(centre.X + (radius * cos), centre.Y + (radius * sin));
            least = Math.Min(least, relief.Shape.HeightAt(at));
        }

        return least;
    }
}
