using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// The straight edges of a region sorted into level bands, so that a question about one place looks at few of them.
/// Each edge is kept with its lower end first: answers do not depend on the direction of a loop, to the last bit.
/// </summary>
internal sealed class EdgeBands
{
    // Tuned: about eight edges of a dense oval fall into one band.
    private const int EdgesPerBand = 4;
    private const int MostBands = 2048;

    private readonly double minY;
    private readonly double bandsPerMm;
    private readonly int[] bandStart;
    private readonly int[] bandEdges;

    internal EdgeBands(Point[][] loops)
    {
        int count = loops.Sum(loop => loop.Length);
        Low = new Point[count];
        High = new Point[count];
        Next = new int[count];
        double maxY = double.NegativeInfinity;
        minY = double.PositiveInfinity;
        int edge = 0;
        foreach (Point[] loop in loops)
        {
            int first = edge;
            for (int i = 0; i < loop.Length; i++, edge++)
            {
                Point a = loop[i];
                Point b = loop[i + 1 == loop.Length ? 0 : i + 1];
                bool up = a.Y < b.Y || (a.Y == b.Y && a.X < b.X);
                Low[edge] = up ? a : b;
                High[edge] = up ? b : a;
                Next[edge] = i + 1 == loop.Length ? first : edge + 1;
                minY = Math.Min(minY, a.Y);
                maxY = Math.Max(maxY, a.Y);
            }
        }
        int bands = Math.Clamp(count / EdgesPerBand, 1, MostBands);
        bandsPerMm = maxY > minY ? bands / (maxY - minY) : 0;
        bandStart = new int[bands + 1];
        for (int i = 0; i < count; i++)
        {
            for (int band = Band(Low[i].Y); band <= Band(High[i].Y); band++)
            {
                bandStart[band + 1]++;
            }
        }
        for (int band = 0; band < bands; band++)
        {
            bandStart[band + 1] += bandStart[band];
        }
        bandEdges = new int[bandStart[bands]];
        int[] free = [.. bandStart];
        for (int i = 0; i < count; i++)
        {
            for (int band = Band(Low[i].Y); band <= Band(High[i].Y); band++)
            {
                bandEdges[free[band]++] = i;
            }
        }
    }

    /// <summary>Lower end of each edge (the left one of a level edge).</summary>
    internal Point[] Low { get; }

    /// <summary>Upper end of each edge.</summary>
    internal Point[] High { get; }

    /// <summary>The edge that follows each in its loop.</summary>
    private int[] Next { get; }

    internal bool Contains(double x, double y)
    {
        int band = (int)Math.Floor((y - minY) * bandsPerMm);
        if (band < 0 || band >= bandStart.Length || double.IsNaN(x))
        {
            return false;
        }
        band = Math.Min(band, bandStart.Length - 2);
        bool inside = false;
        foreach (int edge in bandEdges.AsSpan(bandStart[band]..bandStart[band + 1]))
        {
            Point a = Low[edge];
            Point b = High[edge];
            if (a.Y <= y && y < b.Y && ((b.X - a.X) * (y - a.Y)) < ((x - a.X) * (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }
        return inside;
    }

    /// <summary>A place where two edges touch or cross that should not; null when there is none.</summary>
    internal Point? FirstCrossing()
    {
        for (int band = 0; band + 1 < bandStart.Length; band++)
        {
            int[] edges = bandEdges[bandStart[band]..bandStart[band + 1]];
            double[] left = [.. edges.Select(edge => Math.Min(Low[edge].X, High[edge].X))];
            Array.Sort(left, edges);
            for (int i = 0; i < edges.Length; i++)
            {
                double right = Math.Max(Low[edges[i]].X, High[edges[i]].X);
                for (int j = i + 1; j < edges.Length && left[j] <= right; j++)
                {
                    if (Clash(edges[i], edges[j]))
                    {
                        return Low[edges[j]].Towards(High[edges[j]], 0.5);
                    }
                }
            }
        }
        return null;
    }

    private bool Clash(int first, int second)
    {
        Point a = Low[first];
        Point b = High[first];
        Point c = Low[second];
        Point d = High[second];
        if (a.Y > d.Y || c.Y > b.Y)
        {
            return false;
        }
        double sideC = (b - a).Cross(c - a);
        double sideD = (b - a).Cross(d - a);
        double sideA = (d - c).Cross(a - c);
        double sideB = (d - c).Cross(b - c);
        bool neighbours = Next[first] == second || Next[second] == first;
        if (!neighbours)
        {
            return sideC * sideD <= 0 && sideA * sideB <= 0;
        }
        // Neighbours share an end; they clash only when one folds back onto the other.
        return sideC == 0 && sideD == 0 && (a == c || b == d);
    }

    private int Band(double y) =>
        Math.Clamp((int)Math.Floor((y - minY) * bandsPerMm), 0, bandStart.Length - 2);
}
