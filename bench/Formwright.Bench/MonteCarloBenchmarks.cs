using BenchmarkDotNet.Attributes;
using Formwright.Instrument.Action;
using Formwright.Instrument.Tolerances;

namespace Formwright.Bench;

/// <summary>Many builds: of the action model of the Heron with all its tolerances, and of a sum of eight normal inputs.</summary>
[InProcess, WarmupCount(2), IterationCount(10), MemoryDiagnoser, MinColumn]
public class MonteCarloBenchmarks
{
    private ActionBatch action = null!;
    private EightNormals eight = null!;

    [Params(1_000_000, 4_000_000)]
    public int Builds { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        ActionSetup setup = ActionSetup.Of(ActionBenchmarks.Heron(), ActionBenchmarks.Dome);
        action = new ActionBatch(setup.Model, setup.Tolerances);
        eight = new EightNormals();
    }

    [Benchmark]
    public MonteCarloResult ActionAllCores() => MonteCarlo.Run(action, Builds, 1);

    [Benchmark]
    public MonteCarloResult ActionOneCore() => MonteCarlo.Run(action, Builds, 1, cores: 1);

    [Benchmark]
    public MonteCarloResult EightNormalsAllCores() => MonteCarlo.Run(eight, Builds, 1);

    /// <summary>The sum of eight normal inputs.</summary>
    private sealed class EightNormals : IBatchModel
    {
        public IReadOnlyList<UncertainInput> Inputs { get; } =
        [.. Enumerable.Range(0, 8).Select(i => UncertainInput.Normal($"x{i}", 0, 1))];

        public int OutputCount => 1;

        public void Evaluate(
            ReadOnlySpan<double> inputs,
            Span<double> outputs,
            int stride,
            int count
        )
        {
            for (int n = 0; n < count; n++)
            {
                double sum = 0;
                for (int i = 0; i < 8; i++)
                {
                    sum += inputs[(i * stride) + n];
                }

                outputs[n] = sum;
            }
        }
    }
}
