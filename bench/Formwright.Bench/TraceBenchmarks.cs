using BenchmarkDotNet.Attributes;
using Formwright.Curves;
using Formwright.Trace;
using Formwright.Trace.Files;
using Formwright.Trace.Tests;

namespace Formwright.Bench;

/// <summary>A trace of many points, both sides, 0.02 mm of noise, two bumps: to a fair outline with its bumps.</summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class TraceBenchmarks
{
    private readonly TraceOptions options = new();
    private TraceFile heron = null!;
    private TraceFile ownRadius = null!;
    private TraceFile arcs = null!;

    [Params(5_000, 50_000)]
    public int Points { get; set; }

    [GlobalSetup]
    public void Make()
    {
        OutlineFeatures features = CurveModels.Heron;
        heron = Of(MinimumVariation.Solve(features).Outline!.Half);
        ownRadius = Of(
            MinimumVariation
                .Solve(features with { LowerBout = features.LowerBout with { RadiusMm = 96 } })
                .Outline!.Half
        );
        arcs = Of(ArcOutline.Make().Half);
    }

    /// <summary>The fairest curve through its features.</summary>
    [Benchmark(Baseline = true)]
    public int Heron() => Run(heron);

    /// <summary>The same with a radius of its own at the lower bout.</summary>
    [Benchmark]
    public int WithARadiusOfItsOwn() => Run(ownRadius);

    /// <summary>Drawn with a compass: no fair curve has its steps of the bend, so most shapes are tried in vain.</summary>
    [Benchmark]
    public int OfArcs() => Run(arcs);

    private int Run(TraceFile file) => Tracing.Run(file, options).Result!.Bumps.Count;

    private TraceFile Of(Chain half)
    {
        Random random = new(1);
        double step = 2 * half.LengthMm / Points;
        return ShakenOutline.Whole(
            ShakenOutline.Half(half, step, 0.02, random, (300, 30, 0.4), (500, 12, -0.2)),
            ShakenOutline.Half(half, step, 0.02, random),
            turn: 0.3
        );
    }
}
