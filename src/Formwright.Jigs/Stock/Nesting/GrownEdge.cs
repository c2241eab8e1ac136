using Formwright.Curves;

namespace Formwright.Jigs.Stock.Nesting;

/// <summary>All places no further than a distance from a straight edge.</summary>
internal readonly struct GrownEdge
{
    private readonly Point a;
    private readonly Point b;
    private readonly double grow;
    private readonly Vector side;

    public GrownEdge(Point a, Point b, double growMm)
    {
        (this.a, this.b) = a.Y <= b.Y ? (a, b) : (b, a);
        grow = growMm;
        Vector along = this.b - this.a;
        double length = along.Length;
        // Upwards along the edge its left is towards smaller x.
        side = length > 0 ? along.Left * (growMm / length) : new Vector(-growMm, 0);
    }

    public double LowMm => a.Y - grow;

    public double HighMm => b.Y + grow;

    /// <summary>Its stretch within a row. The grown edge is convex, so its furthest place is at its own furthest height or at the row's nearest.</summary>
    public Stretch Within(double lowMm, double highMm)
    {
        double low = Math.Max(lowMm, LowMm);
        double high = Math.Min(highMm, HighMm);
        double left = Math.Clamp(a.X < b.X ? a.Y : b.Y, low, high);
        double right = Math.Clamp(a.X > b.X ? a.Y : b.Y, low, high);
        return new Stretch(Reach(left, -1), Reach(right, 1));
    }

    // Furthest place to the left (-1) or right (1) at a height: of the two round ends and the straight side between them.
    private double Reach(double y, int way)
    {
        double best = double.NegativeInfinity;
        foreach (Point end in (ReadOnlySpan<Point>)[a, b])
        {
            double up = y - end.Y;
            double under = (grow * grow) - (up * up);
            if (under >= 0)
            {
                best = Math.Max(best, (way * end.X) + Math.Sqrt(under));
            }
        }

        Point from = a + (side * -way);
        Point to = b + (side * -way);
        if (to.Y > from.Y && y >= from.Y && y <= to.Y)
        {
            double x = from.X + ((y - from.Y) / (to.Y - from.Y) * (to.X - from.X));
            best = Math.Max(best, way * x);
        }

        // Rounding at the very top or bottom: the nearer end.
        return way
            * (
                double.IsFinite(best)
                    ? best
                    : way * (Math.Abs(y - a.Y) < Math.Abs(y - b.Y) ? a.X : b.X)
            );
    }
}
