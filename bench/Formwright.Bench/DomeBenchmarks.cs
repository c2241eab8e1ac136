using BenchmarkDotNet.Attributes;
using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Bench;

/// <summary>What runs while a handle is dragged: the Heron's dome (start 106, rim 12, 3 mm) within 0.005 mm, and what is drawn of it.</summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class DomeBenchmarks
{
    private static readonly double[] Heights = [0.5, 1, 1.5, 2, 2.5];
    private Region region = null!;
    private Dome dome = null!;

    [GlobalSetup]
    public void Setup()
    {
        region = HeronRegion.From(106);
        dome = Within5Micrometres();
        Console.WriteLine(
            $"// {region.Loops[0].Count} edges, step {dome.Membrane.StepMm:f2} mm, {dome.Membrane.Unknowns} unknowns, error {dome.EstimatedErrorMm:e1} mm"
        );
    }

    [Benchmark]
    public Region Outline() => Region.Of(region.Loops[0], region.SagittaMm);

    [Benchmark]
    public Dome Within5Micrometres() => new(Membrane.SolveWithin(region, 3, 0.005), 3);

    [Benchmark]
    public IReadOnlyList<Contour> FiveContours() => Contours.Of(dome, Heights, 0.02);

    [Benchmark]
    public IReadOnlyList<ProfilePoint> Centreline() =>
        Profiles.Along(dome, new Point(106, 0), new Point(476, 0), 1);
}
