using BenchmarkDotNet.Attributes;
using Formwright.Fields;

namespace Formwright.Bench;

/// <summary>
/// The dome's membrane over the Heron (start 215, rim 12): all of it, from the region to field and error estimate. Allocated
/// memory is an upper bound of what is held at once.
/// </summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class MembraneBenchmarks
{
    private Region region = null!;

    /// <summary>1 mm is 77 000 unknowns, 0.5 mm four times as many.</summary>
    [Params(4, 2, 1, 0.5)]
    public double StepMm { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        region = HeronRegion.From(215);
        MembraneSolution membrane = Membrane.Solve(region, StepMm);
        Console.WriteLine(
            $"// step {StepMm} mm: {membrane.Unknowns} unknowns, {membrane.Cycles} cycles, residual {membrane.Residual:e1}, error of 3 mm {membrane.EstimatedErrorMm(3):e1} mm"
        );
    }

    [Benchmark]
    public MembraneSolution Solve() => Membrane.Solve(region, StepMm);
}
