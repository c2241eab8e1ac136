namespace Formwright.Instrument.Tolerances;

/// <summary>
/// Propagation of distributions by Monte Carlo (JCGM 101:2008). The builds are dealt to a fixed number of streams, each with its own generator,
/// and the streams are added up in their order: the same seed gives the same bytes on any number of cores.
/// Memory is that of the histograms and does not grow with the builds.
/// </summary>
public static class MonteCarlo
{
    private const int Streams = 64;
    private const int BlockLength = 512;
    private const int Bins = 8192;
    private const int PilotBuilds = 8 * BlockLength;

    /// <summary>Runs the builds.</summary>
    /// <param name="model">Any model.</param>
    /// <param name="builds">How many, at least 1000.</param>
    /// <param name="seed">The same seed gives the same result.</param>
    /// <param name="bands">Ranges that all must be met at once.</param>
    /// <param name="cores">Cores to use; 0 for all.</param>
    /// <exception cref="ArgumentException">The model gives NaN or infinity for some inputs.</exception>
    public static MonteCarloResult Run(
        IBatchModel model,
        long builds,
        ulong seed,
        IReadOnlyList<Band>? bands = null,
        int cores = 0
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentOutOfRangeException.ThrowIfLessThan(builds, 1000);
        ArgumentOutOfRangeException.ThrowIfNegative(cores);
        Band[] ranges = [.. bands ?? []];
        foreach (Band band in ranges)
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(
                band.Output,
                model.OutputCount,
                nameof(bands)
            );
        }

        (double Low, double High)[] limits = Pilot(model, seed);
        (Tally total, bool complete) = Pass(model, builds, seed, ranges, cores, limits);
        if (!complete)
        {
            // Some builds fell outside the bins: once more, with bins that hold them all.
            (total, complete) = Pass(model, builds, seed, ranges, cores, total.Reach());
        }

        if (!complete)
        {
            throw new ArgumentException("The model gave no number for some inputs.", nameof(model));
        }

        Spread[] outputs = new Spread[model.OutputCount];
        for (int o = 0; o < outputs.Length; o++)
        {
            outputs[o] = total.SpreadOf(o);
        }

        return new(builds, seed, outputs, (double)total.InBands / builds);
    }

    // Bins that hold what a short run finds and as much again on either side.
    private static (double Low, double High)[] Pilot(IBatchModel model, ulong seed)
    {
        (double, double)[] wide = new (double, double)[model.OutputCount];
        Array.Fill(wide, (-1.0, 1.0));
        Tally tally = new(model, [], wide, Bins);
        Worker worker = new(model, BlockLength);
        worker.Run(new RandomStream(seed, ulong.MaxValue), PilotBuilds, tally);
        return tally.Reach(0.6);
    }

    private static (Tally Total, bool Complete) Pass(
        IBatchModel model,
        long builds,
        ulong seed,
        Band[] bands,
        int cores,
        (double Low, double High)[] limits
    )
    {
        // One worker for each core, each with its own buffers and counts, takes the next stream until none is left.
        int count = Math.Clamp(cores == 0 ? Environment.ProcessorCount : cores, 1, Streams);
        Moments[] moments = new Moments[Streams];
        Tally[] tallies = new Tally[count];
        int next = -1;
        void Work(int worker)
        {
            Worker draws = new(model, BlockLength);
            Tally tally = tallies[worker] = new(model, bands, limits, Bins);
            for (
                int stream = Interlocked.Increment(ref next);
                stream < Streams;
                stream = Interlocked.Increment(ref next)
            )
            {
                long share = (builds / Streams) + (stream < builds % Streams ? 1 : 0);
                tally.Start();
                draws.Run(new RandomStream(seed, (ulong)stream), share, tally);
                moments[stream] = tally.Finish();
            }
        }

        Task[] others = [.. Enumerable.Range(1, count - 1).Select(i => Task.Run(() => Work(i)))];
        Work(0);
        Task.WaitAll(others);

        // Counts, least and greatest do not depend on the order of adding; sums are added stream by stream.
        Tally total = tallies[0];
        foreach (Tally other in tallies.AsSpan(1))
        {
            total.AddCounts(other);
        }

        total.Start();
        foreach (Moments each in moments)
        {
            total.Add(each);
        }

        return (total, total.IsComplete);
    }

    /// <summary>Draws and evaluates block by block.</summary>
    private sealed class Worker(IBatchModel model, int length)
    {
        private readonly double[] inputs = new double[model.Inputs.Count * length];
        private readonly double[] outputs = new double[model.OutputCount * length];
        private readonly UncertainInput[] spreads = [.. model.Inputs];

        public void Run(RandomStream random, long builds, Tally tally)
        {
            for (long done = 0; done < builds; done += length)
            {
                int count = (int)Math.Min(length, builds - done);
                for (int i = 0; i < spreads.Length; i++)
                {
                    Draws.Fill(random, spreads[i], inputs.AsSpan(i * length, length));
                }

                model.Evaluate(inputs, outputs, length, count);
                tally.Take(outputs, length, count);
            }
        }
    }
}
