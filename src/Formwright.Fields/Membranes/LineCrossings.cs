using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// Where the edge of a region crosses the lines of a square grid, exactly for its straight edges: for each line the
/// crossings in rising order, in steps from 0.
/// </summary>
internal sealed class LineCrossings
{
    private readonly int firstLine;
    private readonly int[] start;
    private readonly double[] at;

    /// <param name="edges">The region's edges.</param>
    /// <param name="stepMm">Step of the grid, mm; line k lies at k·step.</param>
    /// <param name="upright">Whether the lines run along y (columns) or along x (rows).</param>
    internal LineCrossings(EdgeBands edges, double stepMm, bool upright)
    {
        double perStep = 1 / stepMm;
        int count = edges.Low.Length;
        var ends = new (double Across0, double Along0, double Across1, double Along1)[count];
        int lowest = int.MaxValue;
        int highest = int.MinValue;
        for (int i = 0; i < count; i++)
        {
            (Point a, Point b) = (edges.Low[i], edges.High[i]);
            ends[i] = upright
                ? (a.X <= b.X ? (a.X, a.Y, b.X, b.Y) : (b.X, b.Y, a.X, a.Y))
                : (a.Y, a.X, b.Y, b.X);
            ends[i].Across0 *= perStep;
            ends[i].Across1 *= perStep;
            ends[i].Along0 *= perStep;
            ends[i].Along1 *= perStep;
            lowest = Math.Min(lowest, (int)Math.Ceiling(ends[i].Across0));
            highest = Math.Max(highest, (int)Math.Ceiling(ends[i].Across1));
        }
        firstLine = lowest;
        start = new int[highest - lowest + 2];
        foreach (var end in ends)
        {
            // Half-open, so that a line through a corner counts each corner once.
            for (int k = (int)Math.Ceiling(end.Across0); k < end.Across1; k++)
            {
                start[k - firstLine + 1]++;
            }
        }
        for (int i = 1; i < start.Length; i++)
        {
            start[i] += start[i - 1];
        }
        at = new double[start[^1]];
        int[] free = [.. start];
        foreach (var end in ends)
        {
            double slope = (end.Along1 - end.Along0) / (end.Across1 - end.Across0);
            for (int k = (int)Math.Ceiling(end.Across0); k < end.Across1; k++)
            {
                at[free[k - firstLine]++] = end.Along0 + ((k - end.Across0) * slope);
            }
        }
        for (int line = 0; line + 1 < start.Length; line++)
        {
            at.AsSpan(start[line]..start[line + 1]).Sort();
        }
    }

    private LineCrossings(LineCrossings finer)
    {
        firstLine = (finer.firstLine + 1) >> 1;
        int lastLine = (finer.firstLine + finer.start.Length - 2) >> 1;
        start = new int[Math.Max(lastLine - firstLine + 2, 1)];
        for (int i = 0; i + 1 < start.Length; i++)
        {
            start[i + 1] = start[i] + finer.On(2 * (firstLine + i)).Length;
        }
        at = new double[start[^1]];
        for (int i = 0; i + 1 < start.Length; i++)
        {
            ReadOnlySpan<double> from = finer.On(2 * (firstLine + i));
            for (int k = 0; k < from.Length; k++)
            {
                at[start[i] + k] = from[k] * 0.5;
            }
        }
    }

    /// <summary>The crossings of the grid of doubled step: every second line.</summary>
    internal LineCrossings Coarser() => new(this);

    /// <summary>Crossings of line <paramref name="line"/> of this grid, in its steps.</summary>
    internal ReadOnlySpan<double> On(int line)
    {
        int i = line - firstLine;
        return i < 0 || i + 1 >= start.Length ? [] : at.AsSpan(start[i]..start[i + 1]);
    }
}
