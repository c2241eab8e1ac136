namespace Formwright.Instrument.Tolerances;

/// <summary>Counts of many builds: bins, least, greatest, sums, and how often every band was met.</summary>
internal sealed class Tally
{
    private readonly Band[] bands;
    private readonly int bins;
    private readonly long[][] counts;
    private readonly double[] low;
    private readonly double[] width;
    private readonly double[] shift;
    private readonly double[] least;
    private readonly double[] greatest;
    private double[] sum;
    private double[] sumOfSquares;
    private long outside;

    public Tally(IBatchModel model, Band[] bands, (double Low, double High)[] limits, int bins)
    {
        int n = model.OutputCount;
        this.bands = bands;
        this.bins = bins;
        counts = new long[n][];
        low = new double[n];
        width = new double[n];
        shift = new double[n];
        least = new double[n];
        greatest = new double[n];
        sum = new double[n];
        sumOfSquares = new double[n];
        for (int o = 0; o < n; o++)
        {
            counts[o] = new long[bins];
            low[o] = limits[o].Low;
            width[o] = (limits[o].High - limits[o].Low) / bins;
            shift[o] = 0.5 * (limits[o].Low + limits[o].High);
            least[o] = double.PositiveInfinity;
            greatest[o] = double.NegativeInfinity;
        }
    }

    public long InBands { get; private set; }

    public bool IsComplete => outside == 0;

    public void Take(ReadOnlySpan<double> outputs, int stride, int count)
    {
        for (int o = 0; o < counts.Length; o++)
        {
            TakeOutput(o, outputs.Slice(o * stride, count));
        }

        CountBands(outputs, stride, count);
    }

    /// <summary>Starts the sums of a stream.</summary>
    public void Start()
    {
        sum = new double[counts.Length];
        sumOfSquares = new double[counts.Length];
    }

    /// <summary>The sums of the stream.</summary>
    public Moments Finish() => new(sum, sumOfSquares);

    public void Add(Moments moments)
    {
        for (int o = 0; o < counts.Length; o++)
        {
            sum[o] += moments.Sum[o];
            sumOfSquares[o] += moments.SumOfSquares[o];
        }
    }

    public void AddCounts(Tally other)
    {
        InBands += other.InBands;
        outside += other.outside;
        for (int o = 0; o < counts.Length; o++)
        {
            least[o] = Math.Min(least[o], other.least[o]);
            greatest[o] = Math.Max(greatest[o], other.greatest[o]);
            for (int i = 0; i < bins; i++)
            {
                counts[o][i] += other.counts[o][i];
            }
        }
    }

    /// <summary>Bins that hold all that was found, with <paramref name="more"/> of the range on either side.</summary>
    public (double Low, double High)[] Reach(double more = 1e-9)
    {
        (double, double)[] limits = new (double, double)[counts.Length];
        for (int o = 0; o < limits.Length; o++)
        {
            double range = greatest[o] - least[o];
            double margin = Math.Max(more * range, 1e-12 * Math.Max(1, Math.Abs(least[o])));
            limits[o] = (least[o] - margin, greatest[o] + margin);
        }

        return limits;
    }

    public Spread SpreadOf(int output) =>
        new(
            counts[output],
            low[output],
            width[output],
            sum[output],
            sumOfSquares[output],
            shift[output]
        );

    private void TakeOutput(int o, ReadOnlySpan<double> values)
    {
        long[] bin = counts[o];
        double from = low[o];
        double perUnit = 1 / width[o];
        double middle = shift[o];
        double min = least[o];
        double max = greatest[o];
        double s = 0;
        double q = 0;
        foreach (double value in values)
        {
            double place = (value - from) * perUnit;
            if (place >= 0 && place < bin.Length)
            {
                bin[(int)place]++;
            }
            else
            {
                outside++;
            }

            min = value < min ? value : min;
            max = value > max ? value : max;
            double d = value - middle;
            s += d;
            q += d * d;
        }

        least[o] = min;
        greatest[o] = max;
        sum[o] += s;
        sumOfSquares[o] += q;
    }

    private void CountBands(ReadOnlySpan<double> outputs, int stride, int count)
    {
        if (bands.Length == 0)
        {
            InBands += count;
            return;
        }

        for (int n = 0; n < count; n++)
        {
            bool all = true;
            foreach (Band band in bands)
            {
                double value = outputs[(band.Output * stride) + n];
                all &= value >= band.Low && value <= band.High;
            }

            InBands += all ? 1 : 0;
        }
    }
}
