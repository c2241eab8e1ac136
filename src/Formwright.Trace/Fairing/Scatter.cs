namespace Formwright.Trace.Fairing;

/// <summary>How much traced points scatter, whatever the curve does.</summary>
internal static class Scatter
{
    /// <summary>
    /// Standard deviation of independent noise in a row of distances: from the median of their second differences, which a smooth curve
    /// leaves alone and a few bumps can't move. 0 for fewer than eight.
    /// </summary>
    internal static double Of(ReadOnlySpan<(double S, double R)> row)
    {
        if (row.Length < 8)
        {
            return 0;
        }

        double[] differences = new double[row.Length - 2];
        for (int i = 0; i < differences.Length; i++)
        {
            differences[i] = Math.Abs(row[i].R - (2 * row[i + 1].R) + row[i + 2].R);
        }

        Array.Sort(differences);
        // 1.4826: the standard deviation over the median of its size, for a normal distribution; √6: the second difference's gain.
        return 1.4826 * differences[differences.Length / 2] / Math.Sqrt(6);
    }
}
