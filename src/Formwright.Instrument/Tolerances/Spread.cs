namespace Formwright.Instrument.Tolerances;

/// <summary>How one output came out over all builds: a histogram of fine bins, so that memory does not grow with the builds.</summary>
public sealed class Spread
{
    // below[i]: builds in the bins before bin i.
    private readonly long[] below;
    private readonly double low;
    private readonly double width;

    internal Spread(
        long[] counts,
        double low,
        double width,
        double sum,
        double sumOfSquares,
        double shift
    )
    {
        this.low = low;
        this.width = width;
        below = new long[counts.Length + 1];
        for (int i = 0; i < counts.Length; i++)
        {
            below[i + 1] = below[i] + counts[i];
        }

        double builds = Builds;
        double mean = sum / builds;
        Mean = shift + mean;
        StandardDeviation =
            builds > 1
                ? Math.Sqrt(Math.Max(0, (sumOfSquares - (builds * mean * mean)) / (builds - 1)))
                : 0;
    }

    /// <summary>How many builds.</summary>
    public long Builds => below[^1];

    /// <summary>Mean of all builds.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of all builds.</summary>
    public double StandardDeviation { get; }

    /// <summary>Largest error that the bins add to a quantile.</summary>
    public double QuantileError => width;

    /// <summary>The probabilistically symmetric interval that holds 95 of 100 builds (JCGM 101, 7.7).</summary>
    public (double Low, double High) Interval95 => (Quantile(0.025), Quantile(0.975));

    /// <summary>The value below which the share <paramref name="share"/> of the builds lies; straight within a bin.</summary>
    public double Quantile(double share)
    {
        double wanted = Guard.Between(share, 0, 1) * Builds;

        // First bin whose end holds the wanted count; an empty bin at the very start is passed over.
        int from = 0;
        int to = below.Length - 2;
        while (from < to)
        {
            int middle = (from + to) / 2;
            if (below[middle + 1] >= wanted && below[middle + 1] > 0)
            {
                to = middle;
            }
            else
            {
                from = middle + 1;
            }
        }

        long inBin = below[from + 1] - below[from];
        double part = inBin > 0 ? (wanted - below[from]) / inBin : 0;
        return low + ((from + part) * width);
    }

    /// <summary>The share of builds below <paramref name="value"/>; straight within a bin.</summary>
    public double ShareBelow(double value)
    {
        double place = (value - low) / width;
        if (!(place > 0))
        {
            return 0;
        }

        if (place >= below.Length - 1)
        {
            return 1;
        }

        int bin = (int)place;
        double count = below[bin] + ((place - bin) * (below[bin + 1] - below[bin]));
        return count / Builds;
    }
}
