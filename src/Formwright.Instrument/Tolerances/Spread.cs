namespace Formwright.Instrument.Tolerances;

/// <summary>How one output came out over all builds: a histogram of fine bins, so that memory does not grow with the builds.</summary>
public sealed class Spread
{
    private readonly long[] counts;
    private readonly double low;
    private readonly double width;
    private readonly long builds;

    internal Spread(
        long[] counts,
        double low,
        double width,
        long builds,
        double sum,
        double sumOfSquares,
        double shift
    )
    {
        this.counts = counts;
        this.low = low;
        this.width = width;
        this.builds = builds;
        double mean = sum / builds;
        Mean = shift + mean;
        StandardDeviation =
            builds > 1
                ? Math.Sqrt(Math.Max(0, (sumOfSquares - (builds * mean * mean)) / (builds - 1)))
                : 0;
    }

    /// <summary>Mean of all builds.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of all builds.</summary>
    public double StandardDeviation { get; }

    /// <summary>Largest error that the bins add to a quantile.</summary>
    public double QuantileError => width;

    /// <summary>The value below which the share <paramref name="share"/> of the builds lies; straight within a bin.</summary>
    public double Quantile(double share)
    {
        Guard.Between(share, 0, 1);
        double wanted = share * builds;
        double below = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            if (below + counts[i] >= wanted && counts[i] > 0)
            {
                return low + ((i + ((wanted - below) / counts[i])) * width);
            }

            below += counts[i];
        }

        return low + (counts.Length * width);
    }

    /// <summary>The share of builds below <paramref name="value"/>; straight within a bin.</summary>
    public double ShareBelow(double value)
    {
        double place = (value - low) / width;
        if (!(place > 0))
        {
            return 0;
        }

        int whole = (int)Math.Min(place, counts.Length);
        long below = 0;
        for (int i = 0; i < whole; i++)
        {
            below += counts[i];
        }

        double part = whole < counts.Length ? (place - whole) * counts[whole] : 0;
        return (below + part) / builds;
    }

    /// <summary>The probabilistically symmetric interval that holds 95 of 100 builds (JCGM 101, 7.7).</summary>
    public (double Low, double High) Interval95 => (Quantile(0.025), Quantile(0.975));
}
