using System.Collections.Concurrent;
using System.Diagnostics;

namespace Formwright.Fuzz;

/// <summary>
/// Runs many cases against one target. Case <c>i</c> depends on the seed and on <c>i</c> only, so that a find is made again by its number.
/// </summary>
internal sealed class FuzzRun(IFuzzTarget target, int seed)
{
    private const int MostFinds = 20;
    private readonly Mutator mutator = new(target);
    private readonly ConcurrentDictionary<string, long> tally = new();
    private readonly ConcurrentBag<(long Case, Exception What)> finds = [];
    private long slowestTicks;
    private long slowestCase;

    /// <summary>Runs the cases, prints what came of them, and writes the finds.</summary>
    /// <returns>How many broke a promise.</returns>
    public int Run(long from, long cases, string folder)
    {
        Stopwatch watch = Stopwatch.StartNew();
        long done = 0;
        object line = new();
        Parallel.For(
            from,
            from + cases,
            (i, state) =>
            {
                One(i);
                long now = Interlocked.Increment(ref done);
                if (now % 50_000 == 0)
                {
                    lock (line)
                    {
                        Console.Error.WriteLine(
                            $"{now} cases, {finds.Count} finds, {watch.Elapsed.TotalSeconds:0} s"
                        );
                    }
                }

                if (finds.Count >= MostFinds)
                {
                    state.Stop();
                }
            }
        );
        Console.WriteLine(
            $"{target.Name}: {done} cases from seed {seed} in {watch.Elapsed.TotalSeconds:0.0} s"
        );
        Console.WriteLine(
            $"  slowest {slowestTicks * 1000.0 / Stopwatch.Frequency:0.0} ms (case {slowestCase})"
        );
        foreach ((string answer, long count) in tally.OrderByDescending(pair => pair.Value))
        {
            Console.WriteLine($"  {count, 9} {answer}");
        }

        foreach ((long number, Exception what) in finds.OrderBy(find => find.Case))
        {
            Report(number, what, folder);
        }

        Console.WriteLine($"  {finds.Count} finds");
        return finds.Count;
    }

    private void One(long number)
    {
        (byte[] input, Random random) = Case(number);
        long start = Stopwatch.GetTimestamp();
        try
        {
            tally.AddOrUpdate(target.Try(input, random), 1, (_, count) => count + 1);
        }
#pragma warning disable CA1031 // Whatever comes out is the find.
        catch (Exception what)
#pragma warning restore CA1031
        {
            finds.Add((number, what));
        }

        long ticks = Stopwatch.GetTimestamp() - start;
        if (ticks > Interlocked.Read(ref slowestTicks))
        {
            Interlocked.Exchange(ref slowestTicks, ticks);
            Interlocked.Exchange(ref slowestCase, number);
        }
    }

    private (byte[] Input, Random Random) Case(long number)
    {
        // Two rounds of a 64-bit finaliser (Steele et al. 2014, SplitMix64): neighbouring cases share nothing.
        ulong mixed = Mix(Mix((ulong)seed) ^ (ulong)number);
        Random random = new((int)(mixed & int.MaxValue));
        return (mutator.Make(random), random);
    }

    private static ulong Mix(ulong z)
    {
        z += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private void Report(long number, Exception what, string folder)
    {
        Directory.CreateDirectory(folder);
        (byte[] input, _) = Case(number);
        string path = Path.Combine(folder, $"{target.Name}-{seed}-{number}.bin");
        File.WriteAllBytes(path, Smaller(input, number, what));
        Console.WriteLine($"  case {number}: {what.GetType().Name}: {what.Message}");
        Console.WriteLine($"    {what.StackTrace?.Split('\n').FirstOrDefault()?.Trim()}");
        Console.WriteLine($"    {path}");
    }

    // Takes pieces away as long as the same thing happens.
    private byte[] Smaller(byte[] input, long number, Exception what)
    {
        for (int size = Math.Max(1, input.Length / 2); size >= 1; size /= 2)
        {
            for (int at = 0; at + size <= input.Length; )
            {
                byte[] less = [.. input[..at], .. input[(at + size)..]];
                if (Same(less, number, what))
                {
                    input = less;
                }
                else
                {
                    at += size;
                }
            }
        }

        return input;
    }

    private bool Same(byte[] input, long number, Exception what)
    {
        try
        {
            (_, Random random) = Case(number);
            target.Try(input, random);
            return false;
        }
#pragma warning disable CA1031 // Compared with the find.
        catch (Exception now)
#pragma warning restore CA1031
        {
            return now.GetType() == what.GetType()
                && now.StackTrace?.Split('\n')[0] == what.StackTrace?.Split('\n')[0];
        }
    }
}
