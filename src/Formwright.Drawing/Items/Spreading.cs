namespace Formwright.Drawing;

/// <summary>Moves figures apart as little as possible.</summary>
public static class Spreading
{
    /// <summary>
    /// Places with at least <paramref name="gap"/> between neighbours that leave the sorted wishes by the least sum of
    /// squares: with uᵢ = tᵢ - i·gap it is an isotonic regression, solved by pooling adjacent violators (Barlow et al. 1972).
    /// </summary>
    public static double[] Spread(IReadOnlyList<double> sorted, double gap)
    {
        ArgumentNullException.ThrowIfNull(sorted);
        List<(double Mean, int Count)> pools = [];
        for (int i = 0; i < sorted.Count; i++)
        {
            (double Mean, int Count) pool = (sorted[i] - (i * gap), 1);
            while (pools.Count > 0 && pools[^1].Mean > pool.Mean)
            {
                (double mean, int count) = pools[^1];
                pools.RemoveAt(pools.Count - 1);
                int total = count + pool.Count;
                pool = (((mean * count) + (pool.Mean * pool.Count)) / total, total);
            }

            pools.Add(pool);
        }

        double[] places = new double[sorted.Count];
        int at = 0;
        foreach ((double mean, int count) in pools)
        {
            for (int k = 0; k < count; k++, at++)
            {
                places[at] = mean + (at * gap);
            }
        }

        return places;
    }
}
