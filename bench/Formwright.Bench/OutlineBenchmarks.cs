using BenchmarkDotNet.Attributes;
using Formwright.Curves;

namespace Formwright.Bench;

/// <summary>The outline from its features: what a dragged handle costs. Each solve starts anew.</summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class OutlineBenchmarks
{
    private static readonly OutlineFeatures Heron = CurveModels.Heron;

    [Benchmark]
    public OutlineSolution Free() => MinimumVariation.Solve(Heron);

    [Benchmark]
    public OutlineSolution WithFlats() =>
        MinimumVariation.Solve(Heron with { HeelFlatMm = 60, TailFlatMm = 40 });

    [Benchmark]
    public OutlineSolution WithRadii() =>
        MinimumVariation.Solve(
            Heron with
            {
                UpperBout = Heron.UpperBout with { RadiusMm = 85 },
                Waist = Heron.Waist with { RadiusMm = 65 },
                LowerBout = Heron.LowerBout with { RadiusMm = 125 },
            }
        );

    [Benchmark]
    public OutlineSolution OutOfReach() =>
        MinimumVariation.Solve(Heron with { Waist = Heron.Waist with { RadiusMm = 2 } });
}
